using Jumpwright.App.Pages;

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
            return Turned(context, StatusCodes.Status403Forbidden);
        }

        if (request.Path.StartsWithSegments("/pair", StringComparison.Ordinal) || IsCard(request.Path))
        {
            return next(context);
        }

        if (!door.IsPaired(request.Cookies[Cookie]))
        {
            return Turned(context, StatusCodes.Status401Unauthorized);
        }

        return request.Path == "/" || ForPaired.Any(p => request.Path.StartsWithSegments(p, StringComparison.Ordinal))
            ? next(context)
            : Turned(context, StatusCodes.Status403Forbidden);
    }

    /// <summary>The address of a card's link: one token, and what its page is drawn with.</summary>
    private bool IsCard(PathString path)
    {
        string[] parts = path.Value!.Split('/', StringSplitOptions.RemoveEmptyEntries);
        return parts is ["c", var token, ..] && door.Follow(token) is not null;
    }

    private static Task Turned(HttpContext context, int status)
    {
        context.Response.StatusCode = status;
        return Task.CompletedTask;
    }
}
