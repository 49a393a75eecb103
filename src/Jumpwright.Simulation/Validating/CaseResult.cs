using System.Collections.Immutable;
using Jumpwright.Recordings;

namespace Jumpwright.Simulation.Validating;

/// <summary>What became of one case.</summary>
/// <param name="Name">The case's name.</param>
/// <param name="Task">Its task.</param>
/// <param name="RateHz">Its rate.</param>
/// <param name="Difficulties">What was added to it.</param>
/// <param name="Refusal">The sentence when it was refused; null when it was measured.</param>
/// <param name="Trials">How many trials were found.</param>
/// <param name="Values">Each measure that both the truth and the trial have.</param>
public sealed record CaseResult(
    string Name,
    JumpTask Task,
    double RateHz,
    string Difficulties,
    string? Refusal,
    int Trials,
    ImmutableArray<ComparedValue> Values
)
{
    /// <summary>Values that are wrong by more than the issue allows and that nobody was warned of.</summary>
    public IEnumerable<ComparedValue> SilentFailures() => Values.Where(v => v.IsSilentFailure);
}
