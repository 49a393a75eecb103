using Jumpwright.Progression;
using Microsoft.AspNetCore.Components;

namespace Jumpwright.App.Pages.Parts;

/// <summary>
/// The box to tick: empty, ticked, or struck through. The word stands beside it, so it is hidden from readers of the page. It is text and no
/// component, because a ladder has ninety of them.
/// </summary>
internal static class TickBox
{
    private static readonly MarkupString Empty = Drawn("");

    private static readonly MarkupString Ticked = Drawn(
        """<path d="M3.5 8.5 6.8 12 13 3.5" fill="none" stroke="currentColor" stroke-width="2" />"""
    );

    private static readonly MarkupString Struck = Drawn(
        """<path d="M1 15 15 1" fill="none" stroke="currentColor" stroke-width="1.5" />"""
    );

    /// <summary>Null and open: empty.</summary>
    public static MarkupString Of(RungState? state = null) =>
        state switch
        {
            RungState.Owned => Ticked,
            RungState.Closed => Struck,
            _ => Empty,
        };

    private static MarkupString Drawn(string mark) =>
        new(
            """<svg class="box" viewBox="0 0 16 16" aria-hidden="true" focusable="false"><rect x="1" y="1" width="14" height="14" fill="none" stroke="currentColor" stroke-width="1.5" />"""
                + mark
                + "</svg>"
        );
}
