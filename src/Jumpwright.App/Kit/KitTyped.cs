using System.Collections.Immutable;
using System.Globalization;

namespace Jumpwright.App.Kit;

/// <summary>
/// What was typed, by field, in metric units. A number that can't be read is no number, and the calculator says what it expects.
/// </summary>
public sealed class KitTyped(Func<string, string> of)
{
    /// <summary>The words of a field.</summary>
    public string Text(string name) => of(name);

    /// <summary>A number; not a number where none can be read.</summary>
    public double Number(string name) => Read(of(name)) ?? double.NaN;

    /// <summary>A number, or null where nothing stands.</summary>
    public double? Maybe(string name) => of(name).Trim().Length == 0 ? null : Read(of(name)) ?? double.NaN;

    /// <summary>Pairs such as <c>0.9:60, 1.2:110</c>; a pair that can't be read is left out.</summary>
    public ImmutableArray<(double A, double B)> Pairs(string name) =>
        [
            .. KitPairs
                .Of(of(name))
                .Select(p => (Read(p.A), Read(p.B)))
                .Where(p => p is { Item1: not null, Item2: not null })
                .Select(p => (p.Item1!.Value, p.Item2!.Value)),
        ];

    /// <summary>With a decimal point or a decimal comma.</summary>
    private static double? Read(string text) =>
        double.TryParse(
            text.Trim().Replace(',', '.'),
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out double value
        )
            ? value
            : null;
}
