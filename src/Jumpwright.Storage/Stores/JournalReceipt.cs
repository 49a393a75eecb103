using System.Collections.Immutable;

namespace Jumpwright.Storage.Stores;

/// <summary>What became of entries that were handed in.</summary>
/// <param name="Added">Ids that are new.</param>
/// <param name="Known">Ids that were there already, word for word.</param>
/// <param name="Different">Ids that were there already with other words: the first stays, and whoever handed them in is told.</param>
public sealed record JournalReceipt(
    ImmutableArray<string> Added,
    ImmutableArray<string> Known,
    ImmutableArray<string> Different
);
