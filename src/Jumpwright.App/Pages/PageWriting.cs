using System.Reflection;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace Jumpwright.App.Pages;

/// <summary>Writes a component out as a document.</summary>
internal static class PageWriting
{
    /// <summary>The document's bytes, UTF-8.</summary>
    /// <param name="services">What components may ask for.</param>
    /// <param name="parameters">An object whose properties are the component's parameters.</param>
    public static async Task<byte[]> Of<TPage>(IServiceProvider services, object? parameters)
        where TPage : IComponent
    {
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var root = await renderer.RenderComponentAsync<TPage>(ParameterView.FromDictionary(Named(parameters)));
            await using var text = new PooledText();
            await using var unbroken = new UnbrokenHtml(text);
            root.WriteHtmlTo(unbroken);
            unbroken.Flush();
            return text.ToBytes();
        });
    }

    private static Dictionary<string, object?> Named(object? parameters) =>
        parameters is null
            ? []
            : parameters
                .GetType()
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .ToDictionary(p => p.Name, p => p.GetValue(parameters), StringComparer.Ordinal);
}
