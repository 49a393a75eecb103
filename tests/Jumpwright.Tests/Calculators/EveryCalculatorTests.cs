using Jumpwright.Calculators;
using Jumpwright.Calculators.Bands;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.Boxes;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.Deciding;
using Jumpwright.Calculators.Demands;
using Jumpwright.Calculators.Drops;
using Jumpwright.Calculators.Landings;
using Jumpwright.Calculators.Responses;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Calculators.Springs;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Calculators;

/// <summary>Walks the list of calculators: each takes what can be meant and refuses what can't, with a sentence.</summary>
public class EveryCalculatorTests
{
    private static readonly BandSide Band = new(
        0.6,
        [new(0.8, 40), new(1.2, 110), new(1.8, 200)],
        null,
        AnchorKind.FlatSided,
        50,
        0.3,
        WearChecked: true
    );

    private static readonly DropJumpTrial[] Drops =
    [
        .. new[] { 0.2, 0.3, 0.4 }.SelectMany(h => Enumerable.Repeat(new DropJumpTrial(h, 1.5, 0.2), 3)),
    ];

    private static readonly LoadedJump[] Loads = [new(0, 0.36), new(20, 0.28), new(40, 0.215), new(60, 0.165)];
    private static readonly LoadedJump[] Lifts = [new(60, 0.95), new(80, 0.78), new(100, 0.6)];

    private static readonly ApproachTrial[] RunUps =
    [
        .. new[] { 2.0, 2.5, 3.0, 3.5 }.Select(v => new ApproachTrial(TakeOffFoot.TwoFeet, v, 0.4)),
    ];

    /// <summary>For each calculator one input that is fine, and some that are outside, each in another field.</summary>
    private static readonly Dictionary<
        string,
        (Func<Outcome<Calculation>> Good, Func<Outcome<Calculation>>[] Bad)
    > Cases = new(StringComparer.Ordinal)
    {
        ["band-jump"] = (
            () => Any(BandJumps.Of(new(Band, Band, 1.0, 0.3, 0.35, 0.02, 70))),
            [
                () => Any(BandJumps.Of(new(Band, Band, 5.0, 0.3, 0.35, 0.02, 70))),
                () => Any(BandJumps.Of(new(Band, Band, 1.0, 0.3, 35, 0.02, 70))),
                () => Any(BandJumps.Of(new(Band, Band, 1.0, 0.3, 0.35, 0.02, double.NaN))),
                () => Any(BandJumps.Of(new(Band with { RestM = -1 }, Band, 1.0, 0.3, 0.35, 0.02, 70))),
                () => Any(BandJumps.Of(new(Band, Band, 1.0, 0.3, 0.35, 0.02, 70) { Friction = 9 })),
            ]
        ),
        ["box-landing"] = (
            () => Any(BoxLandings.Of(new(1.75, 70, 0.35, 0.02))),
            [
                () => Any(BoxLandings.Of(new(175, 70, 0.35, 0.02))),
                () => Any(BoxLandings.Of(new(1.75, 70, 35, 0.02))),
                () => Any(BoxLandings.Of(new(1.75, 70, 0.35, 0.02, 5))),
            ]
        ),
        ["high-start"] = (
            () => Any(HighStarts.Of(new(HighStart.Seat, 1.75, 70, 0.45))),
            [
                () => Any(HighStarts.Of(new(HighStart.Seat, 17.5, 70, 0.45))),
                () => Any(HighStarts.Of(new(HighStart.Seat, 1.75, 70, 4.5))),
            ]
        ),
        ["drop"] = (
            () => Any(DropDemands.Of(new(0.3, 70, DropStart.Step, []))),
            [
                () => Any(DropDemands.Of(new(30, 70, DropStart.Step, []))),
                () => Any(DropDemands.Of(new(0.3, 7000, DropStart.Step, []))),
                () => Any(DropDemands.Of(new(0.3, 70, DropStart.Jump, []))),
            ]
        ),
        ["landing-force"] = (
            () => Any(LandingForces.Of(new(70, [new(0.2, 1900), new(0.3, 2300), new(0.4, 2700)], 0.45))),
            [
                () => Any(LandingForces.Of(new(70, [new(0.2, 1900), new(0.3, 2300), new(0.4, 2700)], 0.55))),
                () => Any(LandingForces.Of(new(70, [new(0.2, 1900), new(0.3, 2300), new(0.4, 2700)], 45))),
                () => Any(LandingForces.Of(new(70, [new(0.2, 1900), new(0.3, 2300), new(0.4, 27)], 0.45))),
                () => Any(LandingForces.Of(new(70, [new(0.2, 1900), new(0.3, 2300), new(0.4, 2700)], 0.45, 0.3))),
                () => Any(LandingForces.Of(new(70, [new(0.2, 1900), new(0.3, 2300), new(0.4, 2700)], 0.45, 99999))),
            ]
        ),
        ["bound"] = (
            () => Any(Bounds.Of(new(BoundOf.ExternalLoad, [20, 30], 33))),
            [
                () => Any(Bounds.Of(new(BoundOf.ExternalLoad, [20, 30], 33.1))),
                () => Any(Bounds.Of(new(BoundOf.RunUpSpeed, []))),
                () => Any(Bounds.Of(new(BoundOf.RunUpSpeed, [35]))),
            ]
        ),
        ["spring"] = (
            () => Any(SpringRates.Of(new(70, 0.2, 0.5))),
            [() => Any(SpringRates.Of(new(70, 200, 0.5))), () => Any(SpringRates.Of(new(0, 0.2, 0.5)))]
        ),
        ["drop-curve"] = (
            () => Any(DropCurves.Of(new([.. Drops], 0.5))),
            [
                () => Any(DropCurves.Of(new([.. Drops], 50))),
                () => Any(DropCurves.Of(new([.. Drops, new(0.3, 15, 0.2)], 0.5))),
                () => Any(DropCurves.Of(new([.. Drops, new(0.3, 1.5, 200)], 0.5))),
                () => Any(DropCurves.Of(new([.. Drops], 0.1))),
            ]
        ),
        ["load-curve"] = (
            () => Any(LoadCurves.Of(new(LoadMeasure.Height, 75, [.. Loads], 0.2, 0.3))),
            [
                () => Any(LoadCurves.Of(new(LoadMeasure.Height, 75, [.. Loads, new(900, 0.1)], 0.2, 0.3))),
                () => Any(LoadCurves.Of(new(LoadMeasure.Height, 75, [.. Loads], 0.01, 0.02))),
                () => Any(LoadCurves.Of(new(LoadMeasure.Height, 75, [.. Loads], 0.2, 99999))),
                () => Any(LoadCurves.Of(new(LoadMeasure.Height, 75, [.. Loads]))),
            ]
        ),
        ["load-velocity"] = (
            () => Any(LoadVelocities.Of(new([.. Lifts]))),
            [
                () => Any(LoadVelocities.Of(new([.. Lifts, new(100, 60)]))),
                () => Any(LoadVelocities.Of(new([.. Lifts], 3.2))),
                () => Any(LoadVelocities.Of(new([new(60, 0.5), new(100, 0.9)]))),
            ]
        ),
        ["force-velocity"] = (
            () => Any(ForceVelocityProfiles.Of(new(75, 0.4, [.. Loads]))),
            [
                () => Any(ForceVelocityProfiles.Of(new(75, 40, [.. Loads]))),
                () => Any(ForceVelocityProfiles.Of(new(75, 0.4, [.. Loads, new(20, 28)]))),
                () => Any(ForceVelocityProfiles.Of(new(75, 0.4, [.. Loads], SquatJumps: false))),
            ]
        ),
        ["run-up"] = (
            () => Any(RunUpCurves.Of(new([.. RunUps], 0.35, 0.01))),
            [
                () => Any(RunUpCurves.Of(new([.. RunUps], 35, 0.01))),
                () => Any(RunUpCurves.Of(new([.. RunUps, new(TakeOffFoot.TwoFeet, 36, 0.4)], 0.35, 0.01))),
                () => Any(RunUpCurves.Of(new([], 0.35, 0.01))),
            ]
        ),
        ["more-trials"] = (
            () => Any(TrialsNeeded.Of(new(36, 35, 3, 1.2))),
            [
                () => Any(TrialsNeeded.Of(new(36, 35, 0, 1.2))),
                () => Any(TrialsNeeded.Of(new(36, 35, 3, 1.2, Wished: 1.5))),
            ]
        ),
        ["exercise-demand"] = (
            () => Any(ExerciseDemands.Of(new(4.3, 0.5))),
            [
                () => Any(ExerciseDemands.Of(new(null, null))),
                () => Any(ExerciseDemands.Of(new(4300, null))),
                () => Any(ExerciseDemands.Of(new(null, 56))),
            ]
        ),
        ["training-response"] = (
            () => Any(TrainingResponses.Of(new([100], 14))),
            [
                () => Any(TrainingResponses.Of(new([], 14))),
                () => Any(TrainingResponses.Of(new([-5], 14))),
                () => Any(TrainingResponses.Of(new([100], 14, 7, 42))),
            ]
        ),
    };

    public static TheoryData<string> All => [.. CalculatorList.All.Select(b => b.Id)];

    [Theory]
    [MemberData(nameof(All))]
    public void Calculator_GivesValuesWithDoubt_AndRefusesWhatCannotBeMeant(string id)
    {
        Assert.True(Cases.ContainsKey(id), $"{id} is on the list and has no case here.");
        (Func<Outcome<Calculation>> good, Func<Outcome<Calculation>>[] bad) = Cases[id];
        Calculation result = good().Require();
        Assert.Equal(id, result.Basis.Id);
        Assert.NotEmpty(result.Values);
        Assert.All(
            result.Values,
            v =>
            {
                Assert.True(double.IsFinite(v.Value), v.Name);
                Assert.True(double.IsFinite(v.StandardUncertainty) && v.StandardUncertainty >= 0, v.Name);
                Assert.NotEmpty(v.Method);
            }
        );
        Assert.False(string.IsNullOrWhiteSpace(result.Sentence));
        Assert.All(
            bad.Select((ask, i) => (ask, i)),
            pair =>
            {
                Assert.False(pair.ask().TryGet(out _, out Refusal? refusal), $"{id}, case {pair.i} was answered.");
                Assert.Matches(@"^\S.{20,}[.?]$", refusal!.Sentence);
            }
        );
    }

    private static Outcome<Calculation> Any<T>(Outcome<T> outcome)
        where T : Calculation => outcome.Then<Calculation>(result => result);
}
