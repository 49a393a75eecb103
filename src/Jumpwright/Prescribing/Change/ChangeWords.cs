using System.Collections.Immutable;
using Jumpwright.Athletes.Profiles;
using Jumpwright.Quantities;
using Jumpwright.Statistics;
using NodaTime;

namespace Jumpwright.Prescribing.Change;

/// <summary>A trend in a sentence or two.</summary>
internal static class ChangeWords
{
    internal static string Of(
        Series series,
        double level,
        double sd,
        LocalDate since,
        LevelChange change,
        ImmutableArray<LevelAlarm> alarms
    )
    {
        string now = $"{Value(series.Unit, level)} ± {Value(series.Unit, sd)} {UnitOf(series.Unit)}";
        string moved = (change.Rose, change.Fell) switch
        {
            (>= 0.9, _) => $"It rose since {Day.Of(since)}: {By()}.",
            (_, >= 0.9) => $"It fell since {Day.Of(since)}: {By()}.",
            (>= 0.75, _) => $"It likely rose since {Day.Of(since)}: {By()}.",
            (_, >= 0.75) => $"It likely fell since {Day.Of(since)}: {By()}.",
            _ when change.Rose + change.Fell < 0.1 => $"It stands where it stood on {Day.Of(since)}.",
            _ => $"Whether it moved since {Day.Of(since)} can't be told: {By()}.",
        };
        LevelAlarm? last = alarms.IsEmpty ? null : alarms[^1];
        string alarm = last is { } a
            ? $" On {Day.Of(series.Days[a.Session])} it had left where it stood before ({(a.Risen ? "up" : "down")})."
            : "";
        return $"Level {now} after {series.Sessions.Length} sessions. {moved}{alarm}";

        string By() =>
            $"{(change.Change < 0 ? "−" : "+")}{Value(series.Unit, Math.Abs(change.Change))} ± {Value(series.Unit, change.Sd)} {UnitOf(series.Unit)}, chance of a rise beyond {Value(series.Unit, change.SmallestWorthwhile)} {UnitOf(series.Unit)}: {Probability.Said(change.Rose)}, of such a fall: {Probability.Said(change.Fell)}";
    }

    internal static string UnitOf(Unit unit) =>
        unit == Unit.Metre ? "cm"
        : unit == Unit.Second ? "ms"
        : unit.ToString();

    internal static double Scale(Unit unit) =>
        unit == Unit.Metre ? 100
        : unit == Unit.Second ? 1000
        : 1;

    private static string Value(Unit unit, double value)
    {
        double scaled = value * Scale(unit);
        // Newtons and watts come in thousands: their tenths say nothing.
        return scaled.ToString(
            unit == Unit.Newton || unit == Unit.Watt ? "0"
            : Math.Abs(scaled) < 10 && unit != Unit.Metre ? "0.00"
            : "0.0"
        );
    }
}
