using System.Collections.Immutable;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Sessions;

/// <summary>The coach's sheet of one session: who does what, where and when.</summary>
public sealed record CoachSheet(
    string SquadName,
    LocalDate Date,
    string SessionId,
    LocalTime Start,
    int Minutes,
    ImmutableArray<CoachLine> Lines,
    ImmutableArray<CoachStation> Stations,
    ImmutableArray<Sentence> Notes,
    Sentence MadeBy
)
{
    /// <summary>What the minutes before the first turn and between two turns are for; null where none are kept.</summary>
    public Sentence? Between { get; init; }
}
