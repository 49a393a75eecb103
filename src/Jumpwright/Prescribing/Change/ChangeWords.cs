using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Quantities;
using Jumpwright.Statistics;
using NodaTime;

namespace Jumpwright.Prescribing.Change;

/// <summary>A trend in a sentence or two.</summary>
internal static class ChangeWords
{
    internal static Sentence Of(
        Series series,
        double level,
        double sd,
        LocalDate since,
        LevelChange change,
        ImmutableArray<LevelAlarm> alarms
    )
    {
        Unit unit = series.Unit;
        Sentence moved = (change.Rose, change.Fell) switch
        {
            (>= 0.9, _) => $"It rose since {since}: {By()}.",
            (_, >= 0.9) => $"It fell since {since}: {By()}.",
            (>= 0.75, _) => $"It likely rose since {since}: {By()}.",
            (_, >= 0.75) => $"It likely fell since {since}: {By()}.",
            _ when change.Rose + change.Fell < 0.1 => Sentence.Of(
                $"It stands within {Amount(unit, change.SmallestWorthwhile)} of where it stood on {since}: {Probability.Said(1 - change.Rose - change.Fell)}."
            ),
            _ => $"Whether it moved since {since} can't be told: {By()}.",
        };
        Sentence now = $"Level {Doubted(unit, level, sd)} after {series.Sessions.Length} sessions. {moved}";
        return alarms.IsEmpty ? now : Sentence.Of($"{now} {Left(series.Days[alarms[^1].Session], alarms[^1])}");

        Sentence By() =>
            $"{(change.Change < 0 ? "−" : "+")}{Doubted(unit, Math.Abs(change.Change), change.Sd)}, chance of a rise beyond {Amount(unit, change.SmallestWorthwhile)}: {Probability.Said(change.Rose)}, of such a fall: {Probability.Said(change.Fell)}";
    }

    /// <summary>Value and unit, as a trend has them: a length in the reader's units, a time in milliseconds.</summary>
    internal static Sentence Amount(Unit unit, double value) =>
        unit == Unit.Metre
            ? Sentence.Of($"{new Length(value):0.0 cm}")
            : Sentence.Of($"{Number(unit, value)} {UnitOf(unit)}");

    internal static string UnitOf(Unit unit) => unit == Unit.Second ? "ms" : unit.ToString();

    internal static double Scale(Unit unit) => unit == Unit.Second ? 1000 : 1;

    private static Sentence Left(LocalDate day, LevelAlarm alarm) =>
        alarm.Risen
            ? Sentence.Of($"On {day} it had left where it stood before (up).")
            : Sentence.Of($"On {day} it had left where it stood before (down).");

    private static Sentence Doubted(Unit unit, double value, double doubt) =>
        unit == Unit.Metre
            ? Sentence.Of($"{new Length(value):0.0 (cm)} ± {Amount(unit, doubt)}")
            : Sentence.Of($"{Number(unit, value)} ± {Amount(unit, doubt)}");

    private static SaidNumber Number(Unit unit, double value)
    {
        double scaled = value * Scale(unit);
        // Newtons and watts come in thousands: their tenths say nothing.
        return new(
            scaled.ToString(
                unit == Unit.Newton || unit == Unit.Watt ? "0"
                    : Math.Abs(scaled) < 10 ? "0.00"
                    : "0.0",
                CultureInfo.InvariantCulture
            )
        );
    }
}
