using System.Buffers;
using System.Net;
using System.Text;
using System.Text.Encodings.Web;
using Jumpwright.Quantities;

namespace Jumpwright.App.Pages;

/// <summary>
/// Passes a document on, its text with spaces that no line ends at (<see cref="Unbroken"/>). Tags and attributes stay as they are, and so
/// does what is no running text: what a form sends, titles, drawings.
/// </summary>
/// <param name="to">Gets the document.</param>
internal sealed class UnbrokenHtml(TextWriter to) : TextWriter(System.Globalization.CultureInfo.InvariantCulture)
{
    private static readonly string[] AsItIs = ["textarea", "option", "title", "script", "style", "svg", "pre"];
    private static readonly SearchValues<char> EndsOfAName = SearchValues.Create(" \n\r\t/>");
    private readonly StringBuilder _part = new();
    private string? _within;
    private bool _inTag;

    public override Encoding Encoding => to.Encoding;

    public override void Write(char value) => Write([value]);

    public override void Write(string? value) => Write(value.AsSpan());

    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    public override void Write(ReadOnlySpan<char> buffer)
    {
        while (!buffer.IsEmpty)
        {
            int end = buffer.IndexOf(_inTag ? '>' : '<');
            if (end < 0)
            {
                _part.Append(buffer);
                return;
            }

            // The sign that opens a tag belongs to the tag, as the one that closes it does.
            int taken = _inTag ? end + 1 : end;
            _part.Append(buffer[..taken]);
            buffer = buffer[taken..];
            PassOn();
            _inTag = !_inTag;
        }
    }

    /// <summary>What was not passed on yet: a text at the document's end.</summary>
    public override void Flush() => PassOn();

    private void PassOn()
    {
        string part = _part.ToString();
        _part.Clear();
        if (_inTag)
        {
            Enter(part);
        }
        else if (_within is null && part.Contains(' ', StringComparison.Ordinal))
        {
            string text = WebUtility.HtmlDecode(part);
            string held = Unbroken.In(text);
            part = ReferenceEquals(held, text) ? part : HtmlEncoder.Default.Encode(held);
        }

        to.Write(part);
    }

    private void Enter(string tag)
    {
        bool closes = tag.StartsWith("</", StringComparison.Ordinal);
        ReadOnlySpan<char> rest = tag.AsSpan(closes ? 2 : 1);
        int end = rest.IndexOfAny(EndsOfAName);
        ReadOnlySpan<char> name = end < 0 ? rest : rest[..end];
        if (closes)
        {
            _within = name.SequenceEqual(_within) ? null : _within;
        }
        else if (_within is null && !tag.EndsWith("/>", StringComparison.Ordinal))
        {
            foreach (string known in AsItIs)
            {
                _within = name.SequenceEqual(known) ? known : _within;
            }
        }
    }
}
