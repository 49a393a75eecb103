using System.Collections.Immutable;
using Jumpwright.Athletes;

namespace Jumpwright.Storage.Folders;

/// <summary>What became of rows of work done that were to be added to a squad folder.</summary>
/// <param name="Added">Rows written into completed.csv.</param>
/// <param name="Known">Rows that stood there already, word for word.</param>
/// <param name="NotAdded">Why the others were not, a sentence each; the rest was.</param>
public sealed record WorkAdded(ImmutableArray<CompletedItem> Added, int Known, ImmutableArray<string> NotAdded)
{
    /// <summary>Ids among the added that no exercise of the catalogue or of the coach's own has.</summary>
    public ImmutableArray<string> Strange { get; init; } = [];
}
