using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A limit that somebody sets otherwise (overrides.csv, or <c>policy</c> in squad.yaml). Safety decides whether it holds.</summary>
/// <param name="Limit">Id of the limit.</param>
/// <param name="AthleteId">For whom; null: for the whole squad.</param>
/// <param name="Value">The value it is set to, in the limit's own unit.</param>
/// <param name="Who">By name.</param>
/// <param name="Reason">In words.</param>
/// <param name="From">First day; null: from the day it is asked about.</param>
/// <param name="Until">Last day; null: no end was written.</param>
public sealed record LimitOverride(
    string Limit,
    string? AthleteId,
    double Value,
    string Who,
    string Reason,
    LocalDate? From,
    LocalDate? Until
)
{
    /// <summary>What a line of <c>policy</c> names as its author.</summary>
    public const string Policy = "policy in squad.yaml";

    /// <summary>True for a line of <c>policy</c>: it has no name, reason or end, and may only tighten or state a preference.</summary>
    public bool IsPolicy => Who == Policy;
}
