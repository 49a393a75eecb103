using System.Collections.Immutable;

namespace Jumpwright.App.Wording;

/// <summary>A number as it is said, and where it comes from: what unfolds under it on every page.</summary>
/// <param name="Said">The number with its ± and unit.</param>
/// <param name="Lines">What it comes from, in the order of asking.</param>
/// <param name="Recordings">Traces that can be looked at: an address and what it is called.</param>
public sealed record Origin(
    string Said,
    ImmutableArray<OriginLine> Lines,
    ImmutableArray<(string Path, string Called)> Recordings
);
