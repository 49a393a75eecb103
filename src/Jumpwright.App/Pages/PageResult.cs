using Microsoft.AspNetCore.Components;

namespace Jumpwright.App.Pages;

/// <summary>
/// A component written out as a whole document. The framework's own result for this also carries forms, navigation and tokens
/// against forged requests, which need a ring of keys on the disk; these pages use none of it (<see cref="Guard"/> turns forged requests
/// away), and a start would wait for it.
/// </summary>
internal sealed class PageResult<TPage>(object? parameters, int status) : IWrittenPage
    where TPage : IComponent
{
    public int Status => status;

    public Task<byte[]> Write(IServiceProvider services) => PageWriting.Of<TPage>(services, parameters);

    public async Task Answer(HttpContext context, byte[] page)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.ContentLength = page.Length;
        await context.Response.Body.WriteAsync(page, context.RequestAborted);
    }

    public async Task ExecuteAsync(HttpContext httpContext) =>
        await Answer(httpContext, await Write(httpContext.RequestServices));
}
