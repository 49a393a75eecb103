using System.Collections.Immutable;

namespace Jumpwright.Storage.Stores;

/// <summary>What measuring every recording again would change, or did.</summary>
/// <param name="StoredVersions">The versions that made what is stored.</param>
/// <param name="Version">The version that measured again.</param>
/// <param name="Recordings">Recordings measured again.</param>
/// <param name="Unchanged">Of these, those that came out the same to the last digit.</param>
/// <param name="Measures">How each measure would change, by name.</param>
/// <param name="Applied">Whether it was written; otherwise nothing was.</param>
/// <param name="Changes">All changes, in the folder's order.</param>
public sealed record RemeasureReport(
    ImmutableArray<string> StoredVersions,
    string Version,
    int Recordings,
    int Unchanged,
    ImmutableArray<RemeasuredMeasure> Measures,
    bool Applied,
    ImmutableArray<RemeasureChange> Changes
);
