using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Sessions;
using Jumpwright.Tests.Planning;
using NodaTime;

namespace Jumpwright.Tests.Sessions;

public class LogsTests
{
    private static readonly LocalDate Monday = new(2027, 1, 4);

    private static CompletedItem Set(string exercise, int? set, double? height = null, double? contact = null) =>
        new("a01", Monday, "s1", exercise, 1, 5, 5, 0, 0, 0, 7, null, null)
        {
            Set = set,
            HeightM = height,
            ContactTimeS = contact,
            SessionMinutes = 60,
        };

    private static PlannedItem Item(string exercise) => new(Gymnasium.Dose(exercise), 3, null, null, null, []);

    [Fact]
    public void Stops_HeightTenPercentDownAndOn_IsFoundAndSaidToHaveGoneOn()
    {
        StopFinding stop = Assert.Single(
            Logs.Stops(
                Item("tuck-jump"),
                [Set("tuck-jump", 1, 0.40), Set("tuck-jump", 2, 0.35), Set("tuck-jump", 3, 0.40)]
            )
        );
        Assert.Equal(2, stop.Set);
        Assert.True(stop.WentOn);
        Assert.Contains("% lower", stop.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Stops_HeightJustWithinTheLimit_IsNotFound() =>
        Assert.Empty(Logs.Stops(Item("tuck-jump"), [Set("tuck-jump", 1, 0.40), Set("tuck-jump", 2, 0.36)]));

    [Fact]
    public void Stops_LongerContactPainAndFaults_AreEachFound()
    {
        var log = new[]
        {
            Set("depth-jump", 1, contact: 0.20),
            Set("depth-jump", 2, contact: 0.23) with
            {
                PainDuring = 3,
                LandingFaults = 2,
            },
        };
        Assert.Equal(3, Logs.Stops(Item("depth-jump"), log).Length);
        Assert.All(Logs.Stops(Item("depth-jump"), log), s => Assert.False(s.WentOn));
    }

    /// <summary>The week of the check values: 280 450 0 400 220 520 90, sample SD 191.050, monotony 1.4656, strain 2872.6 (N16).</summary>
    [Fact]
    public void Week_OfTheCheckValues_HasTheSampleMonotony()
    {
        double[] loads = [280, 450, 0, 400, 220, 520, 90];
        History history = Of([
            .. loads
                .Select((l, n) => (l, n))
                .Where(d => d.l > 0)
                .Select(d =>
                    Set("pogo-hop", null) with
                    {
                        Date = Monday.PlusDays(d.n),
                        EffortRpe = 10,
                        SessionMinutes = d.l / 10,
                    }
                ),
        ]);
        WeekOfLoad week = Logs.Week(history, Monday, Monday.PlusDays(7));
        Assert.Equal(1960, week.Load, 9);
        Assert.Equal(1.4656, week.Monotony!.Value, 4);
        Assert.Equal(2872.6, week.Strain!.Value, 1);
        Assert.Equal("sample, n − 1", week.StandardDeviation);
    }

    /// <summary>One hard Monday and six days to come look like the most varied week there is; they are not rest yet.</summary>
    [Fact]
    public void Week_NotOver_HasALoadSoFar_ButNoMonotonyAndNoStrain()
    {
        History history = Of([Set("pogo-hop", null) with { Date = Monday, EffortRpe = 6, SessionMinutes = 45 }]);
        WeekOfLoad onSunday = Logs.Week(history, Monday, Monday.PlusDays(6));
        Assert.False(onSunday.IsOver);
        Assert.Equal(270, onSunday.Load, 9);
        Assert.Null(onSunday.Monotony);
        Assert.Null(onSunday.Strain);

        WeekOfLoad nextMonday = Logs.Week(history, Monday, Monday.PlusDays(7));
        Assert.True(nextMonday.IsOver);
        Assert.NotNull(nextMonday.Monotony);
    }

    [Fact]
    public void Week_AllDaysAlike_HasNoMonotonyRatherThanAnInfiniteOne()
    {
        WeekOfLoad week = Logs.Week(Of([]), Monday, Monday.PlusDays(7));
        Assert.Null(week.Monotony);
        Assert.Null(week.Strain);
    }

    [Fact]
    public void Week_SessionWithTwoExercises_CountsItsMinutesOnce() =>
        Assert.Equal(
            420,
            Logs.Week(Of([Set("pogo-hop", null), Set("tuck-jump", null)]), Monday, Monday.PlusDays(7)).Load,
            9
        );

    [Fact]
    public void Loads_NothingLogged_IsUnknownAndNotZero()
    {
        var slots = Gymnasium.Slots(45, 0);
        PlanRequest request = Gymnasium.Request(slots, Gymnasium.Athlete("a01"));
        Plan plan = new(
            PlanStatus.Feasible,
            0,
            0,
            0,
            0,
            0,
            [new(slots[0], [new("a01", [Item("tuck-jump")])], [])],
            [],
            [],
            [],
            []
        );
        LoadDone contacts = Logs.Loads(plan, request, [Of([])]).First(l => l.Tissue is null);
        Assert.Equal(15, contacts.Planned);
        Assert.Null(contacts.Done);
        LoadDone logged = Logs.Loads(plan, request, [Of([Set("tuck-jump", 1) with { SessionId = slots[0].Id }])])
            .First(l => l.Tissue == Jumpwright.Quantities.Tissue.Patellar);
        Assert.Equal(30, logged.Planned);
        Assert.Equal(10, logged.Done);
        Assert.Equal(0, logged.PossiblyMore);

        // A set that pain broke off and nobody counted stands beside what is known, tissue by tissue.
        LoadDone perhaps = Logs.Loads(
                plan,
                request,
                [Of([]) with { PossiblyDone = [new("a01", Monday, slots[0].Id, "tuck-jump", 5, null)] }]
            )
            .First(l => l.Tissue == Jumpwright.Quantities.Tissue.Patellar);
        Assert.Null(perhaps.Done);
        Assert.Equal(10, perhaps.PossiblyMore);
    }

    private static History Of(ImmutableArray<CompletedItem> done) =>
        new(
            new Athlete("a01", "A", new LocalDate(2000, 1, 1), 70, 1.8, null, TrainingLevel.Advanced, null, null),
            [],
            [],
            [],
            [],
            done
        );
}
