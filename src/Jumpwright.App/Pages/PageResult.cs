using Microsoft.AspNetCore.Components;

namespace Jumpwright.App.Pages;

/// <summary>
/// A component written out as a whole document. The framework's own result for this also carries forms, navigation and tokens
/// against forged requests, which need a ring of keys on the disk; these pages use none of it (<see cref="Guard"/> turns forged requests
/// away), and a start would wait for it.
/// </summary>
internal sealed class PageResult<TPage>(object? parameters, int status) : WrittenPage(WrittenPage.Html, status)
    where TPage : IComponent
{
    public override Task<byte[]> Write(IServiceProvider services) => PageWriting.Of<TPage>(services, parameters);
}
