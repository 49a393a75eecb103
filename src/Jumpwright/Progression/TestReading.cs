using Jumpwright.Quantities;
using Jumpwright.Recordings;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>What one test says of one threshold.</summary>
/// <param name="Verdict">What is known.</param>
/// <param name="Sentence">With the number, its doubt and its day.</param>
/// <param name="Probability">That the threshold is kept; null when there is no usable number.</param>
/// <param name="Date">Day of the evidence.</param>
/// <param name="Settle">What would settle it; null when met.</param>
internal sealed record TestReading(
    CriterionVerdict Verdict,
    Sentence Sentence,
    double? Probability,
    LocalDate? Date,
    Sentence? Settle
)
{
    /// <summary>The test whose number it says; null when there is none.</summary>
    public string? Test { get; init; }

    /// <summary>How the test is done, or what stands in its place; null where nothing measures it.</summary>
    public TestWay? How { get; init; }

    /// <summary>In which task; null for a test by hand.</summary>
    public JumpTask? Task { get; init; }
}
