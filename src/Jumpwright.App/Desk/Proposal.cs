using System.Collections.Immutable;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Desk;

/// <summary>A plan made to see what would come of something. Nothing of it counts until somebody takes it.</summary>
/// <param name="Asks">What was asked, as a sentence.</param>
/// <param name="Entries">What is written down when it is taken.</param>
/// <param name="Outcome">The plan, or the sentence why there is none.</param>
/// <param name="From">What was known when it was made.</param>
public sealed record Proposal(
    string Asks,
    ImmutableArray<JournalEntry> Entries,
    Outcome<PlannedWeek> Outcome,
    SquadMaterial From
)
{
    /// <summary>In which language it was asked.</summary>
    public string Language { get; } = Speech.Now.Language;
}
