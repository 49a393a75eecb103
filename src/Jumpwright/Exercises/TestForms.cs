using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Recordings;

namespace Jumpwright.Exercises;

/// <summary>
/// What is jumped in a test, once for everybody who asks for one: a proposed test is itself an exercise under every limit. Where several ways
/// would do, the most telling stands first and the easiest last; the first that is open is done.
/// </summary>
public static class TestForms
{
    private static readonly ImmutableArray<TestForm> None = [new([])];

    /// <summary>Quick hops show contact and stiffness; nobody is sent to maximal rebounds for it, and who may not do the higher hop does the low one.</summary>
    private static readonly ImmutableArray<TestForm> Hops =
    [
        new(["pogo-hop"]) { IsNamed = true },
        new(["low-pogo"]) { IsNamed = true },
    ];

    /// <summary>The ways to do the test of a quality.</summary>
    public static ImmutableArray<TestForm> Of(QualityTest test) =>
        test switch
        {
            QualityTest.LandingScreen => [new(["low-drop-landing"])],
            QualityTest.LandingSession =>
            [
                new(["low-drop-landing"]) { IsNamed = true },
                new(["jump-and-stick"]) { IsNamed = true },
                new(["snap-down"]) { IsNamed = true },
            ],
            QualityTest.SingleHop => [new(["single-leg-forward-hop"])],
            QualityTest.TwoPlateJumps => [new(["countermovement-jump"])],
            QualityTest.Hops => Hops,
            QualityTest.SquatAndCountermovementJumps => [new(["squat-jump", "countermovement-jump"])],
            QualityTest.DropJumps => [new(["low-drop-jump"])],
            QualityTest.ApproachAndCountermovementJumps =>
            [
                new(["approach-jump-two-feet", "countermovement-jump"]) { IsNamed = true },
                new(["approach-jump-two-feet-easy", "countermovement-jump"]) { IsNamed = true },
            ],
            // A test that nobody wrote down here is none that may be proposed.
            _ => [],
        };

    /// <summary>The ways to do a test that an entry criterion names: a measure in a task, or a screen by hand.</summary>
    public static ImmutableArray<TestForm> Of(string test, string? task) =>
        EntryTests.Find(test) is { IsMeasure: false } screen
            ? screen.ExerciseId is { } id
                ? [new([id])]
                : None
            : JumpTasks.Parse(task) switch
            {
                JumpTask.CountermovementJump => [new(["countermovement-jump"])],
                JumpTask.SquatJump => [new(["squat-jump"])],
                JumpTask.LoadedJump => [new(["hex-bar-jump"])],
                JumpTask.DropJump => [new(["low-drop-jump"])],
                JumpTask.RepeatedHops => Hops,
                JumpTask.DropLanding => [new(["low-drop-landing"])],
                JumpTask.SnapDown => [new(["snap-down"])],
                JumpTask.ApproachJump => [new(["approach-jump-two-feet"])],
                JumpTask.BoxJump => [new(["box-jump"])],
                _ => [],
            };
}
