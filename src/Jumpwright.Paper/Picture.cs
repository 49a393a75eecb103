namespace Jumpwright.Paper;

/// <summary>A picture with the words that say the same. Each form is drawn when it is first asked for: pages need no PNG.</summary>
public sealed class Picture
{
    private readonly Lazy<byte[]> _png;
    private readonly Lazy<string> _svg;

    private readonly Lazy<byte[]> _printed;

    internal Picture(Func<byte[]> png, Func<byte[]> printed, Func<string> svg, string caption)
    {
        // A drawing that failed once is tried again by whoever asks next.
        _png = new Lazy<byte[]>(png, LazyThreadSafetyMode.PublicationOnly);
        _printed = new Lazy<byte[]>(printed, LazyThreadSafetyMode.PublicationOnly);
        _svg = new Lazy<string>(svg, LazyThreadSafetyMode.PublicationOnly);
        Caption = caption;
    }

    /// <summary>PNG, for files.</summary>
    public byte[] Png => _png.Value;

    /// <summary>JPEG for paper: a PDF takes it as it is, where a PNG is unpacked and packed again for every sheet.</summary>
    internal byte[] Printed => _printed.Value;

    /// <summary>The same as an SVG element that can stand inside a page.</summary>
    public string Svg => _svg.Value;

    /// <summary>What is seen, with its numbers.</summary>
    public string Caption { get; }
}
