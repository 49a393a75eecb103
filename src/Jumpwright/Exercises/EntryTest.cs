using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>A test that an entry criterion may name: a measure of a recording, or a screen typed by hand.</summary>
/// <param name="Id">Measure name of the contract, or screen id.</param>
/// <param name="Unit">Unit symbol of its value.</param>
/// <param name="IsMeasure">True for a measure of a recording, false for a screen.</param>
/// <param name="IsCount">True for whole numbers, judged with half a unit of grace.</param>
/// <param name="HasSides">True when each leg has its own value, and both must meet.</param>
/// <param name="StandardUncertainty">
/// One standard deviation of a single result of a screen, in its unit; 0 for a measure, which carries its own.
/// </param>
/// <param name="SourceId">Where that uncertainty comes from.</param>
/// <param name="HowToDoIt">The test in one sentence, for "what would settle it".</param>
/// <param name="ExerciseId">
/// The exercise of the catalogue that the test amounts to, so that a limit that forbids the one forbids the other; null for
/// tests without a jump or a load, and for measures, whose task says it (<see cref="TestForms"/>).
/// </param>
public sealed record EntryTest(
    string Id,
    string Unit,
    bool IsMeasure,
    bool IsCount,
    bool HasSides,
    double StandardUncertainty,
    string SourceId,
    Sentence HowToDoIt,
    string? ExerciseId = null
)
{
    /// <summary>The tissue that a test without a jump works until it can no more; null for none. It waits while pain holds that tissue back.</summary>
    public Tissue? Exhausts { get; init; }
}
