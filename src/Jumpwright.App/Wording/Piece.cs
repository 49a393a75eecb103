using System.Text;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Components;

namespace Jumpwright.App.Wording;

/// <summary>
/// A part of a sentence: the page's own words, or words of a file or of the core, which stay as they were written whatever the
/// page is written in.
/// </summary>
/// <param name="Text">The words.</param>
/// <param name="IsEnglish">True for words of a file or of the core.</param>
public readonly record struct Piece(string Text, bool IsEnglish = false)
{
    /// <summary>The sentence, with its English marked as such.</summary>
    public static MarkupString Marked(IEnumerable<Piece> sentence)
    {
        var html = new StringBuilder();
        foreach ((string text, bool isEnglish) in sentence)
        {
            string encoded = HtmlEncoder.Default.Encode(text);
            html.Append(isEnglish ? $"<span lang=\"en\">{encoded}</span>" : encoded);
        }

        return new MarkupString(html.ToString());
    }

    /// <summary>The sentence without its marks.</summary>
    public static string Plain(IEnumerable<Piece> sentence) => string.Concat(sentence.Select(p => p.Text));
}
