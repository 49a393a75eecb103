using System.Collections.Concurrent;
using System.Collections.Immutable;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Paper;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Reports;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>The pictures and reports of a squad's athletes, each made once.</summary>
/// <param name="material">What is known.</param>
/// <param name="before">The book of what was known before; what it drew stays where nothing it rests on changed.</param>
/// <param name="units">In which units the trend of height stands.</param>
public sealed class PictureBook(
    SquadMaterial material,
    PictureBook? before = null,
    UnitSystem units = UnitSystem.Metric
)
{
    private readonly ConcurrentDictionary<(Dossier, LocalDate, string), Once<CardPictures>> _drawn = Kept(
        before?._drawn,
        material.Dossiers,
        drawn => drawn.Item1
    );

    // A trend rests on the whole squad's noise and on what the squad watches, so that reports stay only while neither changed.
    private readonly ConcurrentDictionary<LocalDate, Once<SquadTrends>> _trends =
        before is not null && SameSquad(before.Material, material) ? before._trends : new();
    private readonly ConcurrentDictionary<(Dossier, LocalDate), Once<DrawnReport>> _reports = Kept(
        before is not null && SameSquad(before.Material, material) ? before._reports : null,
        material.Dossiers,
        drawn => drawn.Item1
    );

    // Only the spread between athletes is taken from these; what limits one of them is read from their own history.
    private readonly ConcurrentDictionary<LocalDate, Once<Dictionary<string, Profile>>> _profiles =
        before is not null && SameSquad(before.Material, material) ? before._profiles : new();

    private ImmutableArray<Dossier> Dossiers => Material.Dossiers;

    private SquadMaterial Material { get; } = material;

    /// <summary>The athlete's last jump with its phases, and the trend of its height, as known on that day, in the language of the request.</summary>
    public CardPictures Of(string athleteId, LocalDate day) =>
        Dossiers.FirstOrDefault(d => d.Athlete.Id == athleteId) is { } dossier
            ? _drawn
                .GetOrAdd(
                    // Days between which nothing was measured have the same pictures.
                    (dossier, LastMeasured(dossier.History, day), Speech.Now.Language),
                    last =>
                        new(() =>
                            new CardPictures(
                                LastJump(dossier.History, last.Item2),
                                HeightTrend(dossier.History, last.Item2)
                            )
                        )
                )
                .Value
            : CardPictures.None;

    private static LocalDate LastMeasured(History history, LocalDate day) =>
        history.Trials.Where(t => t.Date <= day).Select(t => t.Date).DefaultIfEmpty(LocalDate.MinIsoValue).Max();

    /// <summary>The athlete's report as known on that day, with its pictures.</summary>
    internal DrawnReport ReportOf(Dossier dossier, LocalDate day) =>
        _reports.GetOrAdd((dossier, day), _ => new(() => Draw(dossier, day))).Value;

    /// <summary>The squad's trends as known on that day; their noise rests on everybody.</summary>
    public SquadTrends TrendsOn(LocalDate day) =>
        _trends
            .GetOrAdd(
                day,
                _ => new(() => Changes.InSquad(Material.Histories, day, ChangeOptions.From(Material.Squad.Policy)))
            )
            .Value;

    /// <summary>Draws all that a page shows of one athlete, so that whoever opens it later does not wait.</summary>
    internal void DrawAhead(Dossier dossier, LocalDate day)
    {
        DrawnReport report = ReportOf(dossier, day);
        foreach (ReportPlot plot in report.Report.Sections.SelectMany(s => s.Plots))
        {
            _ = report.Svg(plot);
        }

        CardPictures pictures = Of(dossier.Athlete.Id, day);
        _ = pictures.LastJump?.Svg;
        _ = pictures.Trend?.Svg;
    }

    private DrawnReport Draw(Dossier dossier, LocalDate day)
    {
        History history = dossier.History;
        Dictionary<string, Profile> squad = _profiles
            .GetOrAdd(
                day,
                _ => new(() => Dossiers.ToDictionary(d => d.Athlete.Id, d => d.ProfileOn(day), StringComparer.Ordinal))
            )
            .Value;
        var profiles = new Dictionary<string, Profile>(squad, StringComparer.Ordinal)
        {
            [history.Athlete.Id] = dossier.ProfileOn(day),
        };
        Prescription facts = Reporting.OfAthlete(
            Material.Squad,
            history,
            profiles,
            Material.Catalogue,
            TrendsOn(day).Of(history.Athlete.Id),
            day
        );
        return new DrawnReport(facts, Reporting.InWords(facts, day, units));
    }

    /// <summary>The same trials of the same people under the same circumstances; kit, fixtures and policy come with the squad.</summary>
    private static bool SameSquad(SquadMaterial a, SquadMaterial b) =>
        ReferenceEquals(a.Squad, b.Squad)
        && a.Dossiers.Length == b.Dossiers.Length
        && a.Dossiers.Zip(b.Dossiers).All(pair => pair.First.HasTrialsOf(pair.Second));

    private static ConcurrentDictionary<TKey, Once<T>> Kept<TKey, T>(
        ConcurrentDictionary<TKey, Once<T>>? made,
        ImmutableArray<Dossier> now,
        Func<TKey, Dossier> whose
    )
        where TKey : notnull
        where T : class
    {
        HashSet<Dossier> same = [.. now];
        return new(made?.Where(m => same.Contains(whose(m.Key))) ?? []);
    }

    /// <summary>The latest countermovement jump with a trace; without one the latest trial of any task that has a trace.</summary>
    private Picture? LastJump(History history, LocalDate day)
    {
        IEnumerable<MeasuredTrial> latest = history
            .Trials.Where(t => t.Date <= day && t.Device is Device.ForcePlate or Device.TwoForcePlates)
            .OrderByDescending(t => t.Trial.Task is JumpTask.CountermovementJump)
            .ThenByDescending(t => t.Date)
            .ThenByDescending(t => t.File, StringComparer.Ordinal)
            .ThenByDescending(t => t.Trial.Number);
        ImmutableArray<Evidence> days = StandingJump.Days(history, day);
        Evidence? reading = days.IsEmpty ? null : days[^1];
        foreach (MeasuredTrial trial in latest)
        {
            if (
                Material.Raw(trial.Sha256) is { } bytes
                && Recording.From(bytes, trial.Labels).TryGet(out Recording? recording, out _)
                && recording is ForceRecording force
                && Tracing.Of(force, trial.Trial).TryGet(out MotionTrace? trace, out _)
            )
            {
                return Plots.Trace(
                    trace,
                    $"{Capital(Spoken.Of(trial.Trial.Task))}, {Dates.Short(trial.Date)}{HeightOf(trial, history, reading)}",
                    writer: SpokenSentences.Writer
                );
            }
        }

        return null;
    }

    /// <summary>
    /// The athlete's height as the page's sentence has it, and its earlier days by the same device and method, so that no two quantities
    /// stand on one trend. Nothing with fewer than two days.
    /// </summary>
    private Picture? HeightTrend(History history, LocalDate day)
    {
        ImmutableArray<Evidence> days = StandingJump.Days(history, day);
        if (days.Length < 2)
        {
            return null;
        }

        (double scale, string unit) = Lengths();
        Evidence last = days[^1];
        ImmutableArray<TrendPoint> points =
        [
            .. days.Select(e => new TrendPoint(
                e.Date,
                scale * e.Measure.In(Unit.Metre),
                scale * e.Measure.StandardUncertainty
            )),
        ];
        string label = $"{Capital(Spoken.Measure(last.Measure.Name))}, {Spoken.Of(last.Device ?? Device.ForcePlate)}";
        return Plots.Trend(points, label, unit, writer: SpokenSentences.Writer);
    }

    /// <summary>
    /// The height to name a picture of a jump with: the mean of its day, as the page's sentence and table have it, and how it was got. A
    /// single trial's own height would be another number with a smaller doubt, and a day on which only another method counts another quantity.
    /// </summary>
    private static string HeightOf(MeasuredTrial trial, History history, Evidence? reading) =>
        StandingJump.OnDayOf(trial, history) is { } day
        && (trial.Trial.Task is not JumpTask.CountermovementJump || day == reading)
            ? TextBook.T[
                day.Trials > 1 ? "picture.mean" : "picture.single",
                MeasureWords.Value(day.Measure),
                SpokenSentences.Text($"{new SaidMethod(day.Measure.Method)}"),
                day.Trials
            ]
            : "";

    private (double Scale, string Unit) Lengths() =>
        units == UnitSystem.InchPound ? (1 / Customary.MetresPerInch, UnitWords.Word("in")) : (100.0, "cm");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
