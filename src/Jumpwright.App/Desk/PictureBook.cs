using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
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
    private readonly ConcurrentDictionary<(History, LocalDate), Lazy<CardPictures>> _drawn = Kept(
        before?._drawn,
        material.Histories
    );

    // A trend rests on the whole squad's noise, so that reports stay only while nobody's trials changed.
    private readonly ConcurrentDictionary<LocalDate, Lazy<ImmutableArray<Trend>>> _trends =
        before is not null && SameTrials(before.Histories, material.Histories) ? before._trends : new();
    private readonly ConcurrentDictionary<(History, LocalDate), Lazy<DrawnReport>> _reports = Kept(
        before is not null && SameTrials(before.Histories, material.Histories) ? before._reports : null,
        material.Histories
    );

    // Only the spread between athletes is taken from these; what limits one of them is read from their own history.
    private readonly ConcurrentDictionary<LocalDate, Lazy<Dictionary<string, Profile>>> _profiles =
        before is not null && SameTrials(before.Histories, material.Histories) ? before._profiles : new();

    private ImmutableArray<History> Histories { get; } = material.Histories;

    /// <summary>The athlete's last jump with its phases, and the trend of its height, as known on that day.</summary>
    public CardPictures Of(string athleteId, LocalDate day) =>
        Histories.FirstOrDefault(h => h.Athlete.Id == athleteId) is { } history
            ? _drawn
                .GetOrAdd(
                    (history, day),
                    _ => new(() => new CardPictures(LastJump(history, day), HeightTrend(history, day)))
                )
                .Value
            : CardPictures.None;

    /// <summary>The athlete's report as known on that day, with its pictures.</summary>
    public DrawnReport ReportOf(History history, LocalDate day) =>
        _reports.GetOrAdd((history, day), _ => new(() => Draw(history, day))).Value;

    /// <summary>The squad's trends as known on that day.</summary>
    public ImmutableArray<Trend> TrendsOn(LocalDate day) =>
        _trends
            .GetOrAdd(day, _ => new(() => Changes.Of(Histories, day, ChangeOptions.From(material.Squad.Policy))))
            .Value;

    private DrawnReport Draw(History history, LocalDate day)
    {
        Dictionary<string, Profile> squad = _profiles
            .GetOrAdd(
                day,
                _ =>
                    new(() =>
                        Histories.ToDictionary(h => h.Athlete.Id, h => Profiling.Of(h, day), StringComparer.Ordinal)
                    )
            )
            .Value;
        var profiles = new Dictionary<string, Profile>(squad, StringComparer.Ordinal)
        {
            [history.Athlete.Id] = Profiling.Of(history, day),
        };
        Report report = Reporting.OfAthlete(material.Squad, history, profiles, material.Catalogue, TrendsOn(day), day);
        return new DrawnReport(
            report,
            report
                .Sections.SelectMany(s => s.Plots)
                .DistinctBy(p => p.Name)
                .ToImmutableDictionary(p => p.Name, ReportPdf.Svg, StringComparer.Ordinal)
        );
    }

    private static bool SameTrials(ImmutableArray<History> a, ImmutableArray<History> b) =>
        a.Length == b.Length && a.Zip(b).All(pair => pair.First.Trials == pair.Second.Trials);

    private static ConcurrentDictionary<(History, LocalDate), Lazy<T>> Kept<T>(
        ConcurrentDictionary<(History, LocalDate), Lazy<T>>? made,
        ImmutableArray<History> now
    )
    {
        HashSet<History> same = new(now, ReferenceEqualityComparer.Instance);
        return new(made?.Where(m => same.Contains(m.Key.Item1)) ?? [], new ByReference());
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
        foreach (MeasuredTrial trial in latest)
        {
            if (
                material.Raw(trial.Sha256) is { } bytes
                && Recording.From(bytes, trial.Labels).TryGet(out Recording? recording, out _)
                && recording is ForceRecording force
                && Tracing.Of(force, trial.Trial).TryGet(out MotionTrace? trace, out _)
            )
            {
                return Plots.Trace(trace, $"{Capital(Words.Of(trial.Trial.Task))}, {Dates.Short(trial.Date)}");
            }
        }

        return null;
    }

    /// <summary>
    /// Countermovement-jump height over days: of the method and device with the latest trial, so that no two quantities
    /// stand on one trend. Nothing with fewer than two days.
    /// </summary>
    private Picture? HeightTrend(History history, LocalDate day)
    {
        var heights = history
            .Trials.Where(t => t.Date <= day && t.Trial.Task is JumpTask.CountermovementJump)
            .Select(t =>
                (
                    t.Date,
                    t.Device,
                    Height: t.Trial.FindTrusted(MeasureNames.JumpHeight)
                        ?? t.Trial.FindTrusted(MeasureNames.JumpHeightFlightTime)
                )
            )
            .Where(t => t.Height is not null)
            .GroupBy(t => (t.Device, t.Height!.Name))
            .OrderByDescending(g => g.Max(t => t.Date))
            .ThenByDescending(g => g.Count())
            .FirstOrDefault();
        if (heights is null || heights.Select(t => t.Date).Distinct().Count() < 2)
        {
            return null;
        }

        (double scale, string unit) =
            units == UnitSystem.InchPound ? (1 / Customary.MetresPerInch, "in") : (100.0, "cm");
        ImmutableArray<TrendPoint> points =
        [
            .. heights
                .OrderBy(t => t.Date)
                .Select(t => new TrendPoint(
                    t.Date,
                    scale * t.Height!.In(Unit.Metre),
                    scale * t.Height.StandardUncertainty
                )),
        ];
        string label = $"{Capital(MeasureWords.Name(heights.Key.Name))}, {Words.Of(heights.Key.Device)}";
        return Plots.Trend(points, label, unit);
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>Histories are long: whether one is the same is asked of the object, not of all that stands in it.</summary>
    private sealed class ByReference : IEqualityComparer<(History History, LocalDate Day)>
    {
        public bool Equals((History History, LocalDate Day) a, (History History, LocalDate Day) b) =>
            ReferenceEquals(a.History, b.History) && a.Day == b.Day;

        public int GetHashCode((History History, LocalDate Day) of) =>
            HashCode.Combine(RuntimeHelpers.GetHashCode(of.History), of.Day);
    }
}
