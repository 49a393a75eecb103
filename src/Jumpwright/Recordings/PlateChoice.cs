using System.Globalization;

namespace Jumpwright.Recordings;

/// <summary>
/// Which force plates of a file with several are meant: <c>3</c> is plate 3 alone, <c>2+1</c> is the left foot on plate 2 and
/// the right on plate 1. Numbers are the file's own, from 1.
/// </summary>
/// <param name="First">The only plate, or the left foot's.</param>
/// <param name="Right">The right foot's plate; null with one plate.</param>
public sealed record PlateChoice(int First, int? Right = null)
{
    /// <summary>The choice as a person writes it, or null where it is none.</summary>
    public static PlateChoice? Parse(string? text)
    {
        string[] parts = (text ?? "").Split('+');
        if (Number(parts[0]) is not { } first || parts.Length > 2)
        {
            return null;
        }

        if (parts.Length == 1)
        {
            return new PlateChoice(first);
        }

        return Number(parts[1]) is { } right && right != first ? new PlateChoice(first, right) : null;
    }

    public override string ToString() =>
        Right is { } right
            ? string.Create(CultureInfo.InvariantCulture, $"{First}+{right}")
            : First.ToString(CultureInfo.InvariantCulture);

    private static int? Number(string text) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int n) && n is >= 1 and <= 255
            ? n
            : null;
}
