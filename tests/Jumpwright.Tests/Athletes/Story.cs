using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Tests.Athletes;

/// <summary>An athlete's history for a test, told a test day at a time.</summary>
internal sealed record Story(History History)
{
    internal static readonly LocalDate Today = new(2027, 1, 4);

    internal static Story Untested { get; } =
        new(
            new History(
                new Athlete(
                    "a01",
                    "Ada Test",
                    new LocalDate(2003, 5, 1),
                    64,
                    1.72,
                    null,
                    TrainingLevel.Intermediate,
                    null,
                    null
                ),
                [],
                [],
                [],
                [],
                []
            )
        );

    internal Profile Profile => Profiling.Of(History, Today);

    internal Finding this[Quality quality] => Profile.Findings.Single(f => f.Quality == quality);

    internal Story Screened(string test, double value, Side side = Side.Both, int daysAgo = 3) =>
        new(
            History with
            {
                Screens = History.Screens.Add(
                    new ScreenResult("a01", Today.PlusDays(-daysAgo), test, side, value, "", null, "coach", null)
                ),
            }
        );

    internal Story Jumped(
        JumpTask task,
        IEnumerable<(string Name, double Value, double U)> measures,
        int daysAgo = 3,
        Device device = Device.TwoForcePlates,
        string method = "impulse-momentum",
        double? dropM = null,
        IEnumerable<string>? doubtful = null
    ) =>
        new(
            History with
            {
                Trials = History.Trials.Add(
                    new MeasuredTrial(
                        "a01",
                        Today.PlusDays(-daysAgo),
                        new Trial(
                            1,
                            task,
                            new TrialEvents(),
                            [.. measures.Select(m => new Measure(m.Name, m.Value, UnitOf(m.Name), m.U, method))],
                            [],
                            [],
                            [.. doubtful ?? []]
                        ),
                        new RecordingLabels("a01", Today.PlusDays(-daysAgo), task, DropHeightM: dropM),
                        device,
                        $"recordings/{History.Trials.Length:000}.csv",
                        "00"
                    )
                ),
            }
        );

    internal Story Counter(double heightM, double u = 0.004, int daysAgo = 3, Device device = Device.TwoForcePlates) =>
        Jumped(JumpTask.CountermovementJump, [(MeasureNames.JumpHeight, heightM, u)], daysAgo, device);

    internal Story Squat(double heightM, double dipPct = 2, double u = 0.004, int daysAgo = 3) =>
        Jumped(
            JumpTask.SquatJump,
            [(MeasureNames.JumpHeight, heightM, u), (MeasureNames.UnwantedDip, dipPct, 0.5)],
            daysAgo
        );

    internal Story Times(int n, Func<Story, Story> more) =>
        Enumerable.Range(0, n).Aggregate(this, (story, _) => more(story));

    private static Unit UnitOf(string name) =>
        name.EndsWith("_m", StringComparison.Ordinal) ? Unit.Metre
        : name.EndsWith("_s", StringComparison.Ordinal) && !name.EndsWith("m_s", StringComparison.Ordinal) ? Unit.Second
        : name.EndsWith("_pct", StringComparison.Ordinal) ? Unit.Percent
        : name == MeasureNames.VerticalStiffness ? Unit.NewtonPerMetre
        : Unit.MetrePerSecond;
}
