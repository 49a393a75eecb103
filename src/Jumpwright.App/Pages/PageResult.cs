using Microsoft.AspNetCore.Components;

namespace Jumpwright.App.Pages;

/// <summary>
/// A component written out as a whole document. The framework's own result for this also carries forms, navigation and tokens
/// against forged requests, which need a ring of keys on the disk; these pages use none of it (<see cref="Guard"/> turns forged requests
/// away), and a start would wait for it.
/// </summary>
internal sealed class PageResult<TPage>(object? parameters, int status) : IResult
    where TPage : IComponent
{
    public async Task ExecuteAsync(HttpContext context)
    {
        using MemoryStream page = await PageWriting.Of<TPage>(context.RequestServices, parameters);
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.ContentLength = page.Length;
        await context.Response.Body.WriteAsync(page.GetBuffer().AsMemory(0, (int)page.Length), context.RequestAborted);
    }
}
