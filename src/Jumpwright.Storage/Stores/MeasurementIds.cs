using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Jumpwright.Recordings;
using NodaTime.Text;

namespace Jumpwright.Storage.Stores;

/// <summary>Names a measurement by what it depends on, so that nothing is measured twice and nothing stale is taken.</summary>
internal static class MeasurementIds
{
    public static string Sha256(ReadOnlySpan<byte> bytes)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(bytes, hash);
        return Convert.ToHexStringLower(hash);
    }

    /// <summary>128 bits of the SHA-256 over content, version and manifest labels, in hexadecimal.</summary>
    public static string Of(string sha256, string version, string manifest) =>
        Sha256(Encoding.UTF8.GetBytes(sha256 + "\n" + version + "\n" + manifest))[..32];

    /// <summary>The manifest's labels as one line; empty when the manifest does not list the recording.</summary>
    public static string Line(RecordingLabels? labels) =>
        labels is null
            ? ""
            : string.Join(
                '\t',
                labels.Athlete,
                labels.Date is { } d ? LocalDatePattern.Iso.Format(d) : "",
                labels.Task?.Id(),
                Text(labels.BodyMassKg),
                Text(labels.ExternalLoadKg),
                Text(labels.DropHeightM),
                labels.Limb?.ToString(),
                labels.Note
            );

    private static string Text(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
