namespace Jumpwright.App.Pages;

/// <summary>An answer that can be written out without giving it, so that it can be kept.</summary>
/// <param name="contentType">What it is.</param>
/// <param name="status">The status it is answered with.</param>
internal abstract class WrittenPage(string contentType, int status = StatusCodes.Status200OK) : IResult
{
    public const string Html = "text/html; charset=utf-8";
    public const string Pdf = "application/pdf";
    public const string Json = "application/json; charset=utf-8";

    public int Status => status;

    /// <summary>The document, UTF-8.</summary>
    public abstract Task<byte[]> Write(IServiceProvider services);

    /// <summary>Answers with the document.</summary>
    public async Task Answer(HttpContext context, byte[] page)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = contentType;
        context.Response.ContentLength = page.Length;
        await context.Response.Body.WriteAsync(page, context.RequestAborted);
    }

    public async Task ExecuteAsync(HttpContext httpContext) =>
        await Answer(httpContext, await Write(httpContext.RequestServices));
}
