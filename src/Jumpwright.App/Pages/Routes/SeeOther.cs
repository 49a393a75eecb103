namespace Jumpwright.App.Pages.Routes;

/// <summary>After something was done: look there (303), so that a reload does not do it again.</summary>
internal sealed class SeeOther(string path) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
        httpContext.Response.Headers.Location = path;
        return Task.CompletedTask;
    }
}
