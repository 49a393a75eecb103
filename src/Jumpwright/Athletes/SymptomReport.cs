using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>What an athlete felt (symptoms.csv).</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="Date">Day it was reported for.</param>
/// <param name="Site">For example <c>achilles</c>, <c>knee</c>, <c>shin</c>.</param>
/// <param name="Side">Side.</param>
/// <param name="Tissue">Tissue if somebody named it, in their words; null otherwise.</param>
/// <param name="NamedBy">Who named the tissue: a role or a name; empty means nobody licensed did.</param>
/// <param name="Kind">pain, swelling, stiffness, giving-way, locking, numbness, illness or other.</param>
/// <param name="When">rest, night, during, after or next-morning; null when not said.</param>
/// <param name="Score">0 to 10; null when not said.</param>
/// <param name="Note">Free text; a dated, named entry that lifts a stop sign stands here too (documented in the squad folder's page).</param>
public sealed record SymptomReport(
    string AthleteId,
    LocalDate Date,
    string Site,
    Side Side,
    string? Tissue,
    string? NamedBy,
    string Kind,
    string? When,
    double? Score,
    string? Note
)
{
    /// <summary>When it was written down; null where a table says it, which knows days alone.</summary>
    public NodaTime.Instant? WrittenAt { get; init; }
}
