using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Progression;

/// <summary>An athlete's tests and log, written down a line at a time; days count from "today" backwards.</summary>
internal sealed record AthleteStory
{
    internal static readonly LocalDate Today = new(2027, 1, 4);

    private static readonly Athlete Someone = new(
        "a01",
        "Ada",
        new LocalDate(2001, 5, 2),
        70,
        1.75,
        "volleyball",
        TrainingLevel.Beginner,
        null,
        null
    );

    internal Athlete Athlete { get; init; } = Someone;
    internal ImmutableArray<Evidence> Measures { get; init; } = [];
    internal ImmutableArray<ScreenResult> Screens { get; init; } = [];
    internal ImmutableArray<SymptomReport> Symptoms { get; init; } = [];
    internal ImmutableArray<Restriction> Restrictions { get; init; } = [];
    internal ImmutableArray<CompletedItem> Done { get; init; } = [];

    internal AthleteStory Measured(string name, JumpTask task, double value, double u, string unit, int daysAgo = 3) =>
        this with
        {
            Measures = Measures.Add(
                new Evidence(
                    new Measure(name, value, new Unit(unit), u, "test"),
                    Today.PlusDays(-daysAgo),
                    "t.csv",
                    1,
                    Device.ForcePlate,
                    task,
                    Limb.Both
                )
            ),
        };

    internal AthleteStory Screened(string test, double value, string unit, Side side = Side.Both, int daysAgo = 3) =>
        this with
        {
            Screens = Screens.Add(
                new ScreenResult("a01", Today.PlusDays(-daysAgo), test, side, value, unit, 1, "coach", null)
            ),
        };

    internal AthleteStory Felt(string kind, int daysAgo) =>
        this with
        {
            Symptoms = Symptoms.Add(
                new SymptomReport(
                    "a01",
                    Today.PlusDays(-daysAgo),
                    "general",
                    Side.Unknown,
                    null,
                    null,
                    kind,
                    null,
                    null,
                    null
                )
            ),
        };

    /// <summary>Pain somewhere, at some time of its day.</summary>
    internal AthleteStory Hurt(double score, string when, int daysAgo) =>
        this with
        {
            Symptoms = Symptoms.Add(
                new SymptomReport(
                    "a01",
                    Today.PlusDays(-daysAgo),
                    "achilles",
                    Side.Right,
                    null,
                    null,
                    "pain",
                    when,
                    score,
                    null
                )
            ),
        };

    /// <summary>One session of an exercise with its usual least dose.</summary>
    internal AthleteStory Did(
        string exercise,
        int daysAgo,
        int? faults = 0,
        double? pain = 0,
        int? sets = null,
        double? dropM = null,
        double? during = 0
    )
    {
        Exercise e = Catalogue.Standard.Find(exercise)!;
        return this with
        {
            Done = Done.Add(
                new CompletedItem(
                    "a01",
                    Today.PlusDays(-daysAgo),
                    $"s-{daysAgo}",
                    exercise,
                    sets ?? e.Dose.SetsMin,
                    e.Dose.RepsMin,
                    e.Dose.SetsMin * e.Dose.RepsMin * e.ContactsPerRep,
                    faults,
                    during,
                    pain,
                    5,
                    dropM,
                    null
                )
            ),
        };
    }

    /// <summary>Two clean sessions, which earn an exercise.</summary>
    internal AthleteStory Earned(string exercise, int daysAgo = 3) => Did(exercise, daysAgo + 4).Did(exercise, daysAgo);

    /// <summary>All tests of a well-trained athlete, done lately.</summary>
    internal AthleteStory WellTested(int daysAgo = 3) =>
        Measured("jump_height_m", JumpTask.CountermovementJump, 0.40, 0.01, "m", daysAgo)
            .Measured("contact_time_s", JumpTask.RepeatedHops, 0.19, 0.01, "s", daysAgo)
            .Measured("contact_time_s", JumpTask.DropJump, 0.20, 0.01, "s", daysAgo)
            .Screened("landing-screen", 1, "faults", Side.Both, daysAgo)
            .Screened("heel-raises", 25, "reps", Side.Left, daysAgo)
            .Screened("heel-raises", 26, "reps", Side.Right, daysAgo)
            .Screened("hex-bar-load", 110, "kg", Side.Both, daysAgo);

    internal Ladder Ladder(params Ruling[] rulings) => On(Today, rulings);

    internal Ladder On(LocalDate day, params Ruling[] rulings) =>
        Ladders.For(
            new Profile("a01", day, [], $"", Measures),
            new History(Athlete, [], Screens, Symptoms, Restrictions, Done),
            Catalogue.Standard,
            day,
            LadderOptions.Default,
            [.. rulings]
        );

    internal RungState State(string exercise) => Ladder().Find(exercise)!.State;

    internal RungReason Reason(string exercise, string criterion) =>
        Ladder().Find(exercise)!.Reasons.Single(r => r.CriterionId == criterion);
}
