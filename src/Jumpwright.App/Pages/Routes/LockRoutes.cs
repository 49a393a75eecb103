using Jumpwright.App.Settings;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Locking a device by hand, and opening it with the word.</summary>
internal static class LockRoutes
{
    public static void Map(WebApplication app, IdleLock idle, Func<HttpContext, string> deviceOf)
    {
        app.MapPost(
            "/lock/now",
            (HttpContext context, CancellationToken _) =>
            {
                idle.Lock(deviceOf(context));
                return (IResult)new SeeOther("/");
            }
        );
        app.MapPost(
            "/lock/open",
            async (HttpContext context, CancellationToken cancel) =>
            {
                IFormCollection form = await context.Request.ReadFormAsync(cancel);
                string next = form["next"].ToString();
                // An address of this program alone: no other host, and no form of one that a browser takes for a host.
                if (!next.StartsWith('/') || next.StartsWith("//", StringComparison.Ordinal) || next.Contains('\\'))
                {
                    next = "/";
                }

                return idle.Open(deviceOf(context), form["word"].ToString()) is { } says
                    ? Answers.Page<LockPage>(new { Next = next, Says = says }, StatusCodes.Status423Locked)
                    : new SeeOther(next);
            }
        );
    }
}
