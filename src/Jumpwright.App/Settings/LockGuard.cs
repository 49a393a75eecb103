using Jumpwright.App.Pages;
using Jumpwright.App.Pages.Routes;
using Jumpwright.App.Sharing;

namespace Jumpwright.App.Settings;

/// <summary>
/// Stands behind the doors: a locked device gets the lock page, programs and the floor's script a sentence, each with 423. The
/// floor's own files hold nobody's data and stay open, so that a tablet goes on logging and hands in after it is opened.
/// </summary>
internal sealed class LockGuard(IdleLock idle)
{
    private static readonly string[] NoData = ["/assets", "/pair", "/c", "/lock"];
    private static readonly string[] FloorFiles =
    [
        "/floor/",
        "/floor",
        "/floor/floor.js",
        "/floor/words.js",
        "/floor/sw.js",
        "/floor/app.webmanifest",
    ];

    /// <summary>What a page or the floor asks for by itself, without anybody there.</summary>
    private static readonly string[] Polled = ["/week/state", "/floor/sessions", "/floor/log"];

    public static string DeviceOf(HttpContext context, bool fromOutside) =>
        fromOutside ? Secrets.Hash(context.Request.Cookies[ShareGuard.Cookie] ?? "nobody") : IdleLock.ThisMachine;

    public async Task Check(HttpContext context, string device, RequestDelegate next)
    {
        PathString path = context.Request.Path;
        if (NoData.Any(p => path.StartsWithSegments(p, StringComparison.Ordinal)) || FloorFiles.Contains(path.Value))
        {
            await next(context);
            return;
        }

        if (!idle.IsLocked(device))
        {
            if (!Polled.Any(p => path.StartsWithSegments(p, StringComparison.Ordinal)))
            {
                idle.Touch(device);
            }

            await next(context);
            return;
        }

        bool page =
            Guard.IsRead(context.Request.Method) && context.Request.Headers.Accept.ToString().Contains("text/html");
        IResult answer = page
            ? Answers.Page<LockPage>(
                new { Next = path.Value + context.Request.QueryString },
                StatusCodes.Status423Locked
            )
            : Answers.Told("answer.locked", StatusCodes.Status423Locked);
        await answer.ExecuteAsync(context);
    }
}
