using System.Reflection;
using System.Text;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace Jumpwright.App.Pages;

/// <summary>Writes a component out as a document.</summary>
internal static class PageWriting
{
    private const int UsualBytes = 64 * 1024;
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The document's bytes, UTF-8.</summary>
    /// <param name="services">What components may ask for.</param>
    /// <param name="parameters">An object whose properties are the component's parameters.</param>
    public static async Task<MemoryStream> Of<TPage>(IServiceProvider services, object? parameters)
        where TPage : IComponent
    {
        var page = new MemoryStream(UsualBytes);
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var root = await renderer.RenderComponentAsync<TPage>(ParameterView.FromDictionary(Named(parameters)));
            await using var writer = new StreamWriter(page, Utf8, leaveOpen: true);
            root.WriteHtmlTo(writer);
        });
        return page;
    }

    private static Dictionary<string, object?> Named(object? parameters) =>
        parameters is null
            ? []
            : parameters
                .GetType()
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .ToDictionary(p => p.Name, p => p.GetValue(parameters), StringComparer.Ordinal);
}
