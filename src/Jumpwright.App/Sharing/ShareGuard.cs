using Jumpwright.App.Pages;
using Jumpwright.App.Pages.Routes;

namespace Jumpwright.App.Sharing;

/// <summary>
/// What another device may see. Without pairing: where to type the code, and a card whose link it has; every other address
/// answers 401. Paired: what a coach needs on the floor; never the laptop's own matters (sharing, taking in, settings, export).
/// </summary>
internal sealed class ShareGuard(Doorkeeper door)
{
    /// <summary>Only over TLS, only to this host, not to scripts.</summary>
    public const string Cookie = "__Host-jumpwright";

    private static readonly string[] ForPaired =
    [
        "/floor",
        "/week",
        "/done",
        "/cards",
        "/sheets",
        "/athletes",
        "/trials",
        "/exercises",
        "/assets",
        "/kit",
        "/lock",
    ];

    public Task Check(HttpContext context, RequestDelegate next)
    {
        HttpRequest request = context.Request;
        Guard.Head(context.Response.Headers);
        if (!Guard.IsRead(request.Method) && !Guard.FromHere(request))
        {
            return Turned(context, StatusCodes.Status403Forbidden, null);
        }

        if (request.Path.StartsWithSegments("/pair", StringComparison.Ordinal) || IsCard(request.Path))
        {
            return next(context);
        }

        if (!door.IsPaired(request.Cookies[Cookie]))
        {
            return Turned(
                context,
                StatusCodes.Status401Unauthorized,
                request.Path.StartsWithSegments("/c", StringComparison.Ordinal) ? "turned.card" : "answer.not-paired"
            );
        }

        return request.Path == "/" || ForPaired.Any(p => request.Path.StartsWithSegments(p, StringComparison.Ordinal))
            ? next(context)
            : Turned(context, StatusCodes.Status403Forbidden, "answer.not-shared");
    }

    /// <summary>The address of a card's link: one token, and what its page is drawn with.</summary>
    private bool IsCard(PathString path)
    {
        string[] parts = path.Value!.Split('/', StringSplitOptions.RemoveEmptyEntries);
        return parts is ["c", var token, ..] && door.Follow(token) is not null;
    }

    /// <summary>A status, and to a person's browser why, in their language; a program gets no byte.</summary>
    private static Task Turned(HttpContext context, int status, string? why)
    {
        context.Response.StatusCode = status;
        bool person =
            Guard.IsRead(context.Request.Method)
            && context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.Ordinal);
        return person && why is not null
            ? Answers
                .Page<TurnedPage>(new { Why = why, MayPair = why == "answer.not-paired" }, status)
                .ExecuteAsync(context)
            : Task.CompletedTask;
    }
}
