using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Waiting until a click has led somewhere.</summary>
internal static class Arrival
{
    private const float PatienceMs = 120_000;

    /// <summary>
    /// Waits until the address holds <paramref name="part"/> and its document is read. Both are asked for again and again: a wait for
    /// the event of a finished load waits for ever where that event came before the wait began.
    /// </summary>
    /// <param name="page">The page.</param>
    /// <param name="part">What the address holds, as a regular expression.</param>
    public static async Task ArriveAt(this IPage page, [StringSyntax(StringSyntaxAttribute.Regex)] string part)
    {
        await Assertions.Expect(page).ToHaveURLAsync(new Regex(part), new() { Timeout = PatienceMs });
        await page.WaitForFunctionAsync(
            "() => document.readyState !== 'loading'",
            null,
            new() { Timeout = PatienceMs }
        );
    }
}
