using System.Collections.Immutable;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>What a clinician allows (restrictions.csv). Past its last day it means "expired: ask", never "free".</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="From">First day.</param>
/// <param name="Until">Last day; null means no end was written.</param>
/// <param name="Site">Site.</param>
/// <param name="Side">Side.</param>
/// <param name="Allowed">Exercise ids or demand words that are allowed; empty when nothing was written.</param>
/// <param name="Forbidden">Exercise ids or demand words that are forbidden.</param>
/// <param name="Limit">A limit in words, for example <c>drops ≤ 0.20 m</c>.</param>
/// <param name="SetBy">Who set it.</param>
/// <param name="Role">Their role.</param>
/// <param name="Note">Free text.</param>
public sealed record Restriction(
    string AthleteId,
    LocalDate From,
    LocalDate? Until,
    string? Site,
    Side Side,
    ImmutableArray<string> Allowed,
    ImmutableArray<string> Forbidden,
    string? Limit,
    string? SetBy,
    string? Role,
    string? Note
)
{
    /// <summary>When it was written down; null where a table says it, which knows days alone.</summary>
    public NodaTime.Instant? WrittenAt { get; init; }
}
