using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>What must be shown before an exercise opens. Measurable by a test of this project, or by logged sessions.</summary>
/// <param name="Id">Kebab-case id.</param>
/// <param name="Kind">Safety or performance.</param>
/// <param name="Text">In words, for the practitioner.</param>
/// <param name="Test">A measure name of the contract, a screen's test id, or <c>owned:exercise-id</c>.</param>
/// <param name="Task">For a measure: the task id it must come from; null otherwise.</param>
/// <param name="Sense"><c>at-least</c> or <c>at-most</c>.</param>
/// <param name="Value">Threshold in the test's unit.</param>
/// <param name="Unit">Unit symbol.</param>
/// <param name="SourceId">Where the threshold comes from.</param>
public sealed record EntryCriterion(
    string Id,
    CriterionKind Kind,
    string Text,
    string Test,
    string? Task,
    string Sense,
    double Value,
    string Unit,
    string SourceId
)
{
    /// <summary><see cref="Text"/> as a sentence: what ships is said in every language, what a squad wrote stays as it is.</summary>
    public Sentence Said => Sentence.OfCatalogue(Text);

    private const string OwnedPrefix = "owned:";

    /// <summary>True when the value tested is divided by body mass (kg per kg) before it is compared.</summary>
    public bool PerBodyMass { get; init; }

    /// <summary>Other tests that settle the same thing, each with its own threshold; one that is met suffices.</summary>
    public ImmutableArray<EntryAlternative> Alternatives { get; init; } = [];

    /// <summary>The exercise that must be owned, or null for a test.</summary>
    public string? OwnedExercise =>
        Test.StartsWith(OwnedPrefix, StringComparison.Ordinal) ? Test[OwnedPrefix.Length..] : null;
}
