using System.Collections.Immutable;

namespace Jumpwright.Storage.Stores;

/// <summary>What measuring every recording again would change. Nothing was written.</summary>
/// <param name="StoredVersions">The versions that made what is stored.</param>
/// <param name="Version">The version that measured again.</param>
/// <param name="Recordings">Recordings measured again.</param>
/// <param name="Unchanged">Of these, those that came out the same to the last digit.</param>
/// <param name="Changes">All changes, in the folder's order.</param>
public sealed record RemeasureReport(
    ImmutableArray<string> StoredVersions,
    string Version,
    int Recordings,
    int Unchanged,
    ImmutableArray<RemeasureChange> Changes
);
