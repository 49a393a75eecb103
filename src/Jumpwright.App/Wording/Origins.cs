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
using static Jumpwright.App.Wording.TextBook;

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
                new(
                    T["origin.recording"],
                    T[
                        "origin.recording.is",
                        trial.File,
                        trial.Trial.Number,
                        Dates.Short(trial.Date),
                        trial.Sha256[..12]
                    ]
                ),
                new(T["origin.measured-with"], Spoken.Of(trial.Device)),
                How(measure),
                hand is null ? ByVersion : new(T["origin.by"], T["origin.by.hand", Version, hand.Who, hand.Set.Why]),
                new(
                    T["origin.doubt"],
                    MeasureWords.Doubt(measure)
                        + (trial.Trial.Doubtful.Contains(measure.Name) ? " " + T["origin.doubtful"] : "")
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
                    new(
                        T["origin.typed"],
                        [new($"{evidence.File}, {Dates.Short(evidence.Date)}"), .. Assessors(typed)]
                    ),
                    How(evidence.Measure),
                    ByVersion,
                    new(T["origin.doubt"], MeasureWords.Doubt(evidence.Measure)),
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
                // Drops from another box and jumps with another load were not averaged with these.
                .Where(t => t.Trial.Task != JumpTask.DropJump || t.Labels.DropHeightM == evidence.BoxM)
                .Where(t => t.Trial.Task != JumpTask.LoadedJump || t.Labels.ExternalLoadKg == evidence.LoadKg)
                .Where(t => t.Trial.FindTrusted(evidence.Measure.Name)?.Method == evidence.Measure.Method),
        ];
        return new(
            MeasureWords.Value(evidence.Measure),
            [
                new(
                    T["origin.recordings"],
                    T["origin.recordings.is", Dates.Short(evidence.Date), evidence.File, evidence.TrialNumber]
                ),
                new(T["origin.measured-with"], Spoken.Of(evidence.Device.Value)),
                How(evidence.Measure),
                ByVersion,
                new(
                    T["origin.doubt"],
                    evidence.Measure.StandardUncertainty > 0
                        ? $"{MeasureWords.Doubt(evidence.Measure)} {T["origin.doubt.trials"]}"
                        : MeasureWords.Doubt(evidence.Measure)
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
                new(
                    T["origin.level"],
                    T[
                        "origin.level.is",
                        MeasureWords.Value(level),
                        trend.Series.Days.Length,
                        Dates.Short(trend.Series.Days[0]),
                        Dates.Short(last)
                    ]
                ),
                new(T["origin.measured-with"], Spoken.Of(key.Device)),
                How(level),
                ByVersion,
                new(T["origin.doubt"], $"{MeasureWords.Doubt(level)} {T["origin.doubt.sessions"]}"),
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
        return StandingJump.Of(leaf.Profile.Current) is { } height
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
            Typed(screen.Value, screen.Unit),
            [
                new(T["origin.typed"], [new($"screens.csv, {Dates.Short(screen.Date)}"), .. Assessors([screen])]),
                new(T["origin.method"], T["origin.method.described"]),
                new(
                    T["origin.doubt"],
                    FieldTest.Find(screen.Test) is { StandardUncertainty: var u } && double.IsFinite(u)
                        ? T["origin.doubt.single", Typed(u, screen.Unit)]
                        : T["origin.doubt.unit"]
                ),
            ],
            []
        );

    /// <summary>A tape is read in centimetres, and said so.</summary>
    private static string Typed(double value, string unit) =>
        unit == "m" ? UnitWords.Spoken(value * 100, "cm") : UnitWords.Spoken(value, unit);

    /// <summary>A number that a calculator gave.</summary>
    public static Origin Of(Measure value, Basis basis) =>
        new(
            MeasureWords.Value(value),
            [
                new(T["origin.worked-out"], T["origin.typed-above"]),
                How(value),
                new(T["origin.formula"], [SpokenSentences.Of(basis.Formula)]),
                ByVersion,
                new(T["origin.doubt"], MeasureWords.Doubt(value)),
                .. basis.Sources.Select(s => new OriginLine(T["origin.source"], [SpokenSources.Of(s)])),
            ],
            []
        );

    /// <summary>A limit's number.</summary>
    public static Origin Of(string limitId, double value, string unit)
    {
        LimitValue? limit = LimitBook.Standard.All.FirstOrDefault(l => l.Id == limitId);
        string said = UnitWords.Spoken(value, unit);
        return limit is null
            ? new(said, [new(T["origin.limit"], T["origin.limit.plan"])], [])
            : new(
                said,
                [
                    new(T["origin.limit"], [SpokenSentences.Of(limit.Said)]),
                    new(T["origin.shipped"], UnitWords.Spoken(limit.Value, limit.Unit)),
                    new(T["origin.firmness"], T[$"origin.firmness.{limit.Kind}"]),
                    new(T["origin.source"], [SpokenSources.Of(limit.Source)]),
                ],
                []
            );
    }

    /// <summary>A threshold's source.</summary>
    public static string Said(Source source) =>
        source.Kind switch
        {
            SourceKind.CommonPractice or SourceKind.House => T[$"source.{source.Kind}"],
            _ => source.Text,
        };

    /// <summary>A source by its id in a few words: a paper by who and when.</summary>
    public static string Short(string id) =>
        !Bibliography.Standard.TryFind(id, out Source? source) ? id
        : source.Kind is SourceKind.CommonPractice or SourceKind.House ? Said(source)
        : source.Brief;

    /// <summary>In which language that is: papers are named as they are, in English.</summary>
    public static string LanguageOf(Source source) =>
        source.Kind is SourceKind.CommonPractice or SourceKind.House ? Speech.Now.Language : "en";

    private static OriginLine ByVersion => new(T["origin.by"], Version);

    private static OriginLine How(Measure measure) => new(T["origin.method"], [MeasureWords.MethodSaid(measure)]);

    private static (string, string) Trace(MeasuredTrial trial) =>
        (Paths.Trial(trial.Sha256, trial.Trial.Number), T["origin.trace", trial.File, trial.Trial.Number]);

    private static IEnumerable<Piece> Assessors(ScreenResult[] typed)
    {
        string before = $", {T["origin.assessed"]} ";
        foreach (string name in typed.Select(t => t.Assessor).OfType<string>().Distinct(StringComparer.Ordinal))
        {
            yield return new(before);
            yield return new(name, IsEnglish: true);
            before = $" {T["origin.and"]} ";
        }
    }
}
