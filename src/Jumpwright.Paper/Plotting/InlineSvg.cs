using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using ScottPlot;

namespace Jumpwright.Paper.Plotting;

/// <summary>Makes of a drawn plot one SVG element that can stand inside any page.</summary>
internal static partial class InlineSvg
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static string Of(Plot plot, PlotSheet sheet, string title, string description)
    {
        XElement root =
            XDocument.Parse(plot.GetSvgXml(sheet.Width, sheet.Height)).Root
            ?? throw new InvalidOperationException("The plot drew nothing.");
        // The library counts its ids through the whole process; they are settled before the picture's own name is made.
        Own(root, "jw");
        string settled = root.ToString(SaveOptions.DisableFormatting);
        string own =
            "jw"
            + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(settled + title + description)))[..12];
        Own(root, own);
        root.SetAttributeValue(
            "viewBox",
            string.Create(CultureInfo.InvariantCulture, $"0 0 {sheet.Width} {sheet.Height}")
        );
        root.SetAttributeValue("width", sheet.Width);
        root.SetAttributeValue("height", sheet.Height);
        root.SetAttributeValue("class", "jw-plot");
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue("aria-labelledby", $"{own}-title {own}-desc");
        foreach (XElement text in root.Descendants(Svg + "text"))
        {
            text.SetAttributeValue("font-family", "Lato, sans-serif");
            text.SetAttributeValue("aria-hidden", "true");
            text.Value = text.Value.Trim('\n', '\t');
        }

        foreach (XAttribute drawn in root.Descendants().Attributes().Where(a => a.Name.LocalName is "d" or "x" or "y"))
        {
            drawn.Value = Rounded(drawn.Value);
        }

        root.AddFirst(
            new XElement(Svg + "title", new XAttribute("id", own + "-title"), Fonts.PaperFonts.Readable(title)),
            new XElement(Svg + "desc", new XAttribute("id", own + "-desc"), Fonts.PaperFonts.Readable(description))
        );
        return root.ToString(SaveOptions.DisableFormatting);
    }

    /// <summary>Places to a tenth of a pixel: finer is not seen, and half of a page was made of it.</summary>
    private static string Rounded(string places) =>
        Place()
            .Replace(
                places,
                place =>
                    Math.Round(double.Parse(place.ValueSpan, CultureInfo.InvariantCulture), 1)
                        .ToString(CultureInfo.InvariantCulture)
            );

    [GeneratedRegex(@"-?\d+\.\d{2,}(e-?\d+)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Place();

    /// <summary>Gives every id, and every reference to one, a name that belongs to this picture alone.</summary>
    private static void Own(XElement root, string own)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (XAttribute id in root.DescendantsAndSelf().Attributes("id"))
        {
            string name = string.Create(CultureInfo.InvariantCulture, $"{own}-{names.Count}");
            names[id.Value] = name;
            id.Value = name;
        }

        foreach (XAttribute attribute in root.DescendantsAndSelf().Attributes())
        {
            if (
                attribute.Value.StartsWith("url(#", StringComparison.Ordinal)
                && names.TryGetValue(attribute.Value[5..^1], out string? name)
            )
            {
                attribute.Value = $"url(#{name})";
            }
            else if (
                attribute.Name.LocalName == "href"
                && attribute.Value.StartsWith('#')
                && names.TryGetValue(attribute.Value[1..], out string? target)
            )
            {
                attribute.Value = "#" + target;
            }
        }
    }
}
