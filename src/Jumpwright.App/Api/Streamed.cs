using System.IO.Pipelines;

namespace Jumpwright.App.Api;

/// <summary>An answer of many megabytes, given to the network while it is written.</summary>
/// <param name="contentType">What it is.</param>
/// <param name="write">Writes it.</param>
internal sealed class Streamed(string contentType, Func<PipeWriter, CancellationToken, Task> write) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.ContentType = contentType;
        return write(httpContext.Response.BodyWriter, httpContext.RequestAborted);
    }
}
