using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Exercises;

/// <summary>The linter must be able to fail: each case breaks the shipped catalogue in one place.</summary>
public class CatalogueLintTests
{
    public static TheoryData<string, string> Breaks =>
        new()
        {
            { "orphan", "jump-and-stick: an orphan" },
            { "progression circle", "its progressions run in a circle" },
            { "regression circle", "its regressions run in a circle" },
            { "owned circle", "its owned criteria run in a circle" },
            { "unknown regression", "regression 'no-such-thing' is not in the catalogue" },
            { "unknown progression", "progression 'no-such-thing' is not in the catalogue" },
            { "unknown owned", "asks to own 'no-such-thing'" },
            { "unknown test", "no test gives 'courage'" },
            { "measure without a task", "needs the task it comes from" },
            { "wrong unit", "is in s, not in m" },
            { "unknown source", "the source 'nobody-1900' is not in the bibliography" },
            { "unknown criterion source", "the source 'nobody-1901' is not in the bibliography" },
            { "regression asks more", "asks more of the Achilles (3) than it does itself (1)" },
            { "progression jumps two tiers", "raises the Achilles from 1 to 3; one tier at most" },
            { "one cue", "it has 1 cues" },
            { "two faults", "it has 2 faults" },
            { "empty purpose", "purpose is empty" },
            { "unknown kit", "kit 'trampoline' × 1 is not a known kit" },
            { "top tier without rest", "the top tier on the Achilles needs at least 48 h, not 0" },
            { "tier above the top", "the demand on bone is missing or not a tier" },
            { "drops across thirty centimetres", "its drops run across 0.30 m" },
            { "dose upside down", "is not a range" },
            { "rest does not fit", "does not hold the rest between sets" },
            { "unknown limb", "limb is 'hind'" },
            { "no regression", "it has no regression to step back to" },
            { "bar without a load", "a bar and a load range go together" },
            { "load over the test", "is not a range of shares of body-mass or hex-bar-test" },
            { "run-up without steps", "a run-up and a range of steps go together" },
            { "no instead", "asks less of the Achilles: a sore one has no instead" },
            { "depth jump with one contact", "a depth jump has two contacts" },
            { "box without heights", "landing on a box and a range of box heights go together" },
            { "number against its tier", "3.4 body-weights on bone is tier 3, but its file says 1" },
            { "family of one", "the family 'lonely-jump' has no other variant" },
            { "family by another name", "the family 'Tuck Jump' is not kebab-case" },
            { "no variant", "it trains nothing that another of the family 'tuck-jump' trains" },
            { "number in newtons", "is in 'N', not in 'body-weights'" },
        };

    [Theory]
    [MemberData(nameof(Breaks))]
    public void Check_ACatalogueBrokenInOnePlace_SaysSo(string breakage, string expected) =>
        Assert.Contains(CatalogueLint.Check(Broken(breakage)), s => s.Contains(expected, StringComparison.Ordinal));

    private static Catalogue Broken(string breakage) =>
        breakage switch
        {
            "orphan" => With("snap-down", e => e with { Progressions = [] }),
            "progression circle" => With("pogo-hop", e => e with { Progressions = ["low-pogo"] }),
            "regression circle" => With("snap-down", e => e with { Regressions = ["jump-and-stick"] }),
            "owned circle" => With("snap-down", e => e with { Entry = [Owned("jump-and-stick")] }),
            "family of one" => With("snap-down", e => e with { Family = "lonely-jump" }),
            "family by another name" => With("snap-down", e => e with { Family = "Tuck Jump" }),
            "no variant" => With("pogo-hop", e => e with { Family = "tuck-jump" }),
            "unknown regression" => With("pogo-hop", e => e with { Regressions = ["no-such-thing"] }),
            "unknown progression" => With("pogo-hop", e => e with { Progressions = ["no-such-thing"] }),
            "unknown owned" => With("pogo-hop", e => e with { Entry = [Owned("no-such-thing")] }),
            "unknown test" => With("pogo-hop", e => e with { Entry = [Test("courage", null, "1")] }),
            "measure without a task" => With("pogo-hop", e => e with { Entry = [Test("contact_time_s", null, "s")] }),
            "wrong unit" => With("pogo-hop", e => e with { Entry = [Test("contact_time_s", "drop-jump", "m")] }),
            "unknown source" => With("pogo-hop", e => e with { Sources = ["nobody-1900"] }),
            "unknown criterion source" => With(
                "pogo-hop",
                e => e with { Entry = [Owned("low-pogo") with { SourceId = "nobody-1901" }] }
            ),
            "regression asks more" => With("low-pogo", e => e with { Regressions = ["single-leg-pogo"] }),
            "progression jumps two tiers" => With("low-pogo", e => e with { Progressions = ["single-leg-pogo"] }),
            "one cue" => With("pogo-hop", e => e with { Cues = [e.Cues[0]] }),
            "two faults" => With("pogo-hop", e => e with { Faults = [.. e.Faults.Take(2)] }),
            "empty purpose" => With("pogo-hop", e => e with { Purpose = " " }),
            "unknown kit" => With("pogo-hop", e => e with { Kit = [new KitNeed("trampoline", 1)] }),
            "top tier without rest" => With(
                "single-leg-pogo",
                e => e with { RecoveryHours = e.RecoveryHours.SetItem(Tissue.Achilles, 0) }
            ),
            "tier above the top" => With("pogo-hop", e => e with { Demand = e.Demand.SetItem(Tissue.Bone, 4) }),
            "drops across thirty centimetres" => With(
                "low-drop-landing",
                e => e with { DropRangeM = new HeightRange(0.15, 0.45) }
            ),
            "dose upside down" => With("pogo-hop", e => e with { Dose = e.Dose with { SetsMin = 9 } }),
            "rest does not fit" => With("depth-jump", e => e with { MinutesPerSet = 1 }),
            "unknown limb" => With("pogo-hop", e => e with { Limb = "hind" }),
            "no regression" => With("pogo-hop", e => e with { Regressions = [] }),
            "bar without a load" => With("hex-bar-jump", e => e with { Load = null }),
            "load over the test" => With("hex-bar-pull", e => e with { Load = e.Load! with { MaxShare = 1.2 } }),
            "run-up without steps" => With("approach-rehearsal", e => e with { RunUpSteps = null }),
            "no instead" => With("pogo-hop", e => e with { Regressions = [] }),
            "depth jump with one contact" => With("depth-jump", e => e with { ContactsPerRep = 1 }),
            "number against its tier" => With(
                "countermovement-jump",
                e => e with { DemandValues = [new(Tissue.Bone, 3.4, "body-weights", "wallace-2010", false, null)] }
            ),
            "number in newtons" => With(
                "countermovement-jump",
                e => e with { DemandValues = [new(Tissue.Bone, 1.6, "N", "wallace-2010", false, null)] }
            ),
            "box without heights" => With("box-jump", e => e with { BoxRangeM = null }),
            _ => throw new ArgumentOutOfRangeException(nameof(breakage), breakage),
        };

    private static EntryCriterion Owned(string id) => Test("owned:" + id, null, "1");

    private static EntryCriterion Test(string test, string? task, string unit) =>
        new("c", CriterionKind.Safety, "In words.", test, task, "at-least", 1, unit, "common-practice");

    private static Catalogue With(string id, Func<Exercise, Exercise> change)
    {
        ImmutableArray<Exercise> exercises = Catalogue.Standard.Exercises;
        return Catalogue.Standard with { Exercises = [.. exercises.Select(e => e.Id == id ? change(e) : e)] };
    }
}
