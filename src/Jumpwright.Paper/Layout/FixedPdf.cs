using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf;

namespace Jumpwright.Paper.Layout;

/// <summary>
/// Saves a document so that the same content gives the same bytes. What the library would draw at random (the document's
/// ids, the ids in its metadata, the tags of font subsets) is written over, in place, with values made from the content.
/// </summary>
internal static partial class FixedPdf
{
    /// <summary>Saves, then settles every id.</summary>
    /// <param name="document">Finished document.</param>
    /// <param name="title">For the reader's title bar and screen readers.</param>
    /// <param name="date">The day the paper is for; there is no clock here.</param>
    /// <param name="language">What it is written in, for screen readers.</param>
    public static byte[] Save(PdfDocument document, string title, NodaTime.LocalDate date, string language)
    {
        var stamp = new DateTime(date.Year, date.Month, date.Day, 0, 0, 0, DateTimeKind.Utc);
        document.Info.Title = title;
        document.Info.Creator = "Jumpwright " + Quantities.ProductVersion.Current;
        document.Info.CreationDate = stamp;
        document.Info.ModificationDate = stamp;
        document.Language = language;
        using var stream = new MemoryStream();
        document.Save(stream, closeStream: false);
        return Settle(stream.ToArray());
    }

    private static byte[] Settle(byte[] bytes)
    {
        // Latin-1 maps every byte to one character and back, so that compressed streams survive untouched.
        string text = Encoding.Latin1.GetString(bytes);
        var tags = new Dictionary<string, string>(StringComparer.Ordinal);
        text = SubsetTag()
            .Replace(
                text,
                m =>
                {
                    string random = m.Groups["tag"].Value;
                    if (!tags.TryGetValue(random, out string? settled))
                    {
                        settled = "JWFNT" + (char)('A' + tags.Count);
                        tags.Add(random, settled);
                    }

                    return "/" + settled + "+";
                }
            );
        string blank = TrailerIds()
            .Replace(text, m => "/ID[<" + new string('0', 32) + "><" + new string('0', 32) + ">]");
        blank = MetadataIds().Replace(blank, "uuid:00000000-0000-0000-0000-000000000000");
        string hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(blank)))[..32];
        string uuid = "uuid:" + Guid.ParseExact(hash, "N").ToString("D");
        text = TrailerIds().Replace(text, "/ID[<" + hash + "><" + hash + ">]");
        text = MetadataIds().Replace(text, uuid);
        byte[] settledBytes = Encoding.Latin1.GetBytes(text);
        return settledBytes.Length == bytes.Length
            ? settledBytes
            : throw new InvalidOperationException("The ids of the PDF have another length than expected.");
    }

    [GeneratedRegex(@"/(?<tag>[A-Z]{6})\+(?=Lato)", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex SubsetTag();

    [GeneratedRegex(@"/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\]", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex TrailerIds();

    [GeneratedRegex(
        "uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}",
        RegexOptions.CultureInvariant,
        10_000
    )]
    private static partial Regex MetadataIds();
}
