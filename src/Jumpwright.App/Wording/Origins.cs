using System.Collections.Immutable;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Athletes;
using Jumpwright.Calculators;
using Jumpwright.Prescribing.Change;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.App.Wording;

/// <summary>Origins of the numbers that pages show: recording, method, version, doubt.</summary>
internal static class Origins
{
    private static readonly string Version = $"Jumpwright {ProductVersion.Current}";

    /// <summary>A measure of one trial.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="measure">One of its measures.</param>
    /// <param name="hand">Who set events of it by hand; null when nobody did.</param>
    public static Origin Of(MeasuredTrial trial, Measure measure, CorrectedTrial? hand = null) =>
        new(
            MeasureWords.Value(measure),
            [
                (
                    "Recording",
                    $"{trial.File}, trial {trial.Trial.Number}, {Dates.Short(trial.Date)}, SHA-256 {trial.Sha256[..12]}…"
                ),
                ("Measured with", Words.Of(trial.Device)),
                ("Method", MeasureWords.Method(measure)),
                ("By", hand is null ? Version : $"{Version}, with events that {hand.Who} set by hand: {hand.Set.Why}"),
                (
                    "Doubt",
                    MeasureWords.Doubt(measure)
                        + (
                            trial.Trial.Doubtful.Contains(measure.Name)
                                ? " The recording makes it doubtful: nothing is to be decided from it."
                                : ""
                        )
                ),
            ],
            [Trace(trial)]
        );

    /// <summary>A measure that decisions take: the mean of a day's trials, or of results typed by hand.</summary>
    public static Origin Of(Evidence evidence, History history)
    {
        if (evidence.Device is null)
        {
            ScreenResult[] typed =
            [
                .. history.Screens.Where(s => s.Test == evidence.Measure.Name && s.Date == evidence.Date),
            ];
            return new(
                MeasureWords.Value(evidence.Measure),
                [
                    ("Typed by hand", $"{evidence.File}, {Dates.Short(evidence.Date)}{Assessors(typed)}"),
                    ("Method", MeasureWords.Method(evidence.Measure)),
                    ("By", Version),
                    ("Doubt", MeasureWords.Doubt(evidence.Measure)),
                ],
                []
            );
        }

        MeasuredTrial[] pooled =
        [
            .. history
                .Trials.Where(t =>
                    t.Date == evidence.Date && t.Device == evidence.Device && t.Trial.Task == evidence.Task
                )
                .Where(t => (t.Labels.Limb ?? Limb.Both) == (evidence.Limb ?? Limb.Both))
                .Where(t => t.Trial.FindTrusted(evidence.Measure.Name)?.Method == evidence.Measure.Method),
        ];
        return new(
            MeasureWords.Value(evidence.Measure),
            [
                (
                    "Recordings",
                    $"the mean of what counts of {Dates.Short(evidence.Date)}, the last {evidence.File}, trial {evidence.TrialNumber}"
                ),
                ("Measured with", Words.Of(evidence.Device.Value)),
                ("Method", MeasureWords.Method(evidence.Measure)),
                ("By", Version),
                (
                    "Doubt",
                    MeasureWords.Doubt(evidence.Measure)
                        + " It holds the device's error and theirs from trial to trial."
                ),
            ],
            [.. pooled.Select(Trace)]
        );
    }

    /// <summary>The number that a step of the ladder rests on: none where its sentence says none.</summary>
    public static ImmutableArray<Origin> Of(RungReason reason, AthleteLeaf leaf)
    {
        if (reason is not { Test: { } test, Date: { } date })
        {
            return [];
        }

        ImmutableArray<Origin> measured =
        [
            .. leaf
                .Profile.Current.Where(e =>
                    e.Measure.Name == test && e.Task == reason.Task && e.Date == date && e.Limb is null or Limb.Both
                )
                .Select(e => Of(e, leaf.History)),
        ];
        return measured.Length > 0
            ? measured
            : [.. leaf.History.Screens.Where(s => s.Test == test && s.Date == date).Select(Of)];
    }

    /// <summary>A sentence of a trend: the level it speaks of, over which sessions, and the recordings of the latest one.</summary>
    public static Origin Of(Trend trend, History history)
    {
        SeriesKey key = trend.Series.Key;
        var level = new Measure(key.Measure, trend.Level, trend.Series.Unit, trend.LevelSd, key.Method);
        LocalDate last = trend.Series.Days[^1];
        return new(
            MeasureWords.Value(level),
            [
                (
                    "Level",
                    $"{MeasureWords.Value(level)}, of {trend.Series.Days.Length} sessions, {Dates.Short(trend.Series.Days[0])} to {Dates.Short(last)}, each the mean of its trials, never a best"
                ),
                ("Measured with", Words.Of(key.Device)),
                ("Method", MeasureWords.Method(level)),
                ("By", Version),
                (
                    "Doubt",
                    MeasureWords.Doubt(level) + " It holds the noise from session to session, learnt from the squad."
                ),
            ],
            [
                .. history
                    .Trials.Where(t =>
                        t.Date == last
                        && t.Device == key.Device
                        && t.Trial.Task == key.Task
                        && t.Trial.FindTrusted(key.Measure)?.Method == key.Method
                    )
                    .Select(Trace),
            ]
        );
    }

    /// <summary>The height that an athlete's sentence begins with; none where it says none.</summary>
    public static ImmutableArray<Origin> OfHeight(AthleteLeaf leaf)
    {
        Evidence? Found(string name) =>
            leaf.Profile.Current.FirstOrDefault(e =>
                e.Measure.Name == name && e.Task is JumpTask.CountermovementJump && e.Limb is null or Limb.Both
            );

        return (Found(MeasureNames.JumpHeight) ?? Found(MeasureNames.JumpHeightFlightTime)) is { } height
            ? [Of(height, leaf.History)]
            :
            [
                .. leaf
                    .History.Screens.Where(s => s.Test is "best-touch" or "standing-reach")
                    .GroupBy(s => s.Test, StringComparer.Ordinal)
                    .Select(g => Of(g.MaxBy(s => s.Date)!)),
            ];
    }

    /// <summary>A result typed by hand.</summary>
    public static Origin Of(ScreenResult screen) =>
        new(
            UnitWords.Spoken(screen.Value, screen.Unit),
            [
                ("Typed by hand", $"screens.csv, {Dates.Short(screen.Date)}{Assessors([screen])}"),
                ("Method", "as the test is described in docs/squad-folder.md"),
                (
                    "Doubt",
                    FieldTest.Find(screen.Test) is { StandardUncertainty: var u } && double.IsFinite(u)
                        ? $"one standard uncertainty of a single value is taken as {UnitWords.Value(u, screen.Unit)}."
                        : "as the unit says; none is written down."
                ),
            ],
            []
        );

    /// <summary>A number that a calculator gave.</summary>
    public static Origin Of(Measure value, Basis basis) =>
        new(
            MeasureWords.Value(value),
            [
                ("Worked out from", "what is typed above"),
                ("Method", $"{MeasureWords.Method(value)}: {basis.Formula}"),
                ("By", Version),
                ("Doubt", MeasureWords.Doubt(value)),
                .. basis.Sources.Select(s => ("Source", s.Text)),
            ],
            []
        );

    /// <summary>A limit's number.</summary>
    public static Origin Of(string limitId, double value, string unit)
    {
        LimitValue? limit = LimitBook.Standard.All.FirstOrDefault(l => l.Id == limitId);
        string said = UnitWords.Value(value, unit);
        return limit is null
            ? new(said, [("Limit", "worked out for this plan from what was done before and what is planned")], [])
            : new(
                said,
                [
                    ("Limit", limit.Says),
                    ("As shipped", UnitWords.Value(limit.Value, limit.Unit)),
                    ("Firmness", limit.Kind.ToString().ToLowerInvariant()),
                    ("Source", limit.Source.Text),
                ],
                []
            );
    }

    /// <summary>A threshold's source.</summary>
    public static string Said(Source source) =>
        source.Kind switch
        {
            SourceKind.CommonPractice => "common practice",
            SourceKind.House => "rule of the house",
            _ => source.Text,
        };

    private static (string, string) Trace(MeasuredTrial trial) =>
        (Paths.Trial(trial.Sha256, trial.Trial.Number), $"trace of {trial.File}, trial {trial.Trial.Number}");

    private static string Assessors(ScreenResult[] typed) =>
        string.Join(" and ", typed.Select(t => t.Assessor).OfType<string>().Distinct(StringComparer.Ordinal))
            is { Length: > 0 } names
            ? $", by {names}"
            : "";
}
