using System.Net;
using Jumpwright.Quantities;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>A document as somebody reads it: letters for their names, and a space for one that no line ends at.</summary>
internal static class PageText
{
    public static string Of(string html) => Spoken(WebUtility.HtmlDecode(html));

    /// <summary>The same of what a browser shows of an element.</summary>
    public static async Task<string> ReadAsync(this ILocator element) => Spoken(await element.InnerTextAsync());

    public static string Spoken(string text) => text.Replace(Unbroken.Space, ' ');
}
