namespace Jumpwright.App.Pages;

/// <summary>
/// Only for this machine: a page of a foreign host that points its name at 127.0.0.1 is turned away, a foreign page can't
/// send anything here, and no page may load, frame or run anything from elsewhere.
/// </summary>
internal static class Guard
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data:; "
        + "manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    public static Task Check(HttpContext context, RequestDelegate next)
    {
        if (context.Request.Host.Host is not ("127.0.0.1" or "localhost" or "[::1]"))
        {
            return Turned(context, StatusCodes.Status421MisdirectedRequest);
        }

        if (!IsRead(context.Request.Method) && !FromHere(context.Request))
        {
            return Turned(context, StatusCodes.Status403Forbidden);
        }

        Head(context.Response.Headers);
        return next(context);
    }

    /// <summary>What every answer forbids.</summary>
    public static void Head(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        // Not "no-referrer": under that a browser names no origin with a form, and forms would be turned away.
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
    }

    public static bool IsRead(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method);

    /// <summary>
    /// Whether something that changes comes from a page of this program. Browsers name the page's origin with every such
    /// request; a program that is no browser names none and may not send forms by accident.
    /// </summary>
    public static bool FromHere(HttpRequest request)
    {
        string origin = request.Headers.Origin.ToString();
        string site = request.Headers["Sec-Fetch-Site"].ToString();
        return (origin.Length == 0 || origin == $"{request.Scheme}://{request.Host}")
            && site is "" or "same-origin" or "none";
    }

    private static Task Turned(HttpContext context, int status)
    {
        context.Response.StatusCode = status;
        return Task.CompletedTask;
    }
}
