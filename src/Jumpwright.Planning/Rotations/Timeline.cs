using System.Collections.Immutable;

namespace Jumpwright.Planning.Rotations;

/// <summary>A session's blocks with the second at which each begins, counted from the session's start.</summary>
internal sealed record Timeline(ImmutableArray<(Block Block, int Start)> Placed);
