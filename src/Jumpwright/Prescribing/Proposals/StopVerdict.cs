using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>Whether a test goes on after the trials so far.</summary>
/// <param name="Stops">True: no further trial, and nothing higher, heavier or faster.</param>
/// <param name="Because">Why it stops; null when it goes on.</param>
public sealed record StopVerdict(bool Stops, Sentence? Because)
{
    /// <summary>Nothing stands against the next trial.</summary>
    public static StopVerdict GoesOn { get; } = new(false, null);
}
