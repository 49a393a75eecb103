using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>One reason of a rung, as a record; screens only render it.</summary>
/// <param name="CriterionId">Id of the entry criterion, or of the safety rule.</param>
/// <param name="Verdict">What is known.</param>
/// <param name="Sentence">With numbers, ± and date.</param>
/// <param name="Probability">Probability that it is met; null when not tested.</param>
/// <param name="Date">Day of the evidence.</param>
/// <param name="CheapestTest">What would settle it; null when met.</param>
public sealed record RungReason(
    string CriterionId,
    CriterionVerdict Verdict,
    Sentence Sentence,
    double? Probability,
    LocalDate? Date,
    Sentence? CheapestTest
)
{
    /// <summary>The ruling of the day that closes the step; null for any other reason.</summary>
    public Ruling? Ruling { get; init; }

    /// <summary>The measure or the test by hand whose number of that day the sentence says; null when it says none.</summary>
    public string? Test { get; init; }

    /// <summary>How far the log has come towards owning the exercise: no condition, it opens and closes nothing.</summary>
    public bool IsOwnership => CriterionId == Ownership;

    /// <summary>
    /// A ruling, a hold or time without practice: its sentence says what closes the step. Any other reason's says what is needed, and then what
    /// is known of it.
    /// </summary>
    public bool Closes => Ruling is not null || CriterionId is Holds.Landing or Holds.Drops or Holds.TimeOff or Faded;

    /// <summary>The id of a step that was not done for too long.</summary>
    internal const string Faded = "faded";

    /// <summary>The id of that reason.</summary>
    internal const string Ownership = "owned";

    /// <summary>In which task it was measured; null for a test by hand.</summary>
    public JumpTask? Task { get; init; }
}
