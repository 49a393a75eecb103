using System.Collections.Immutable;

namespace Jumpwright.Sessions;

/// <summary>One station's line on the time axis.</summary>
public sealed record CoachStation(
    string Station,
    string Exercise,
    double StartMin,
    double EndMin,
    ImmutableArray<string> AthleteNames
);
