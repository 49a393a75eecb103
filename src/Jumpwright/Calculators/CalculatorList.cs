using System.Collections.Immutable;
using Jumpwright.Calculators.Bands;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.Boxes;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.Deciding;
using Jumpwright.Calculators.Demands;
using Jumpwright.Calculators.Drops;
using Jumpwright.Calculators.Landings;
using Jumpwright.Calculators.Responses;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Calculators.Springs;

namespace Jumpwright.Calculators;

/// <summary>Every calculator of the room, by what it stands on: for pages and documents.</summary>
public static class CalculatorList
{
    /// <summary>In the order in which a session meets them.</summary>
    public static ImmutableArray<Basis> All { get; } =
    [
        BandJumps.Basis,
        BoxLandings.Basis,
        HighStarts.Basis,
        DropDemands.Basis,
        LandingForces.Basis,
        Bounds.Basis,
        SpringRates.Basis,
        DropCurves.Basis,
        LoadCurves.Basis,
        LoadVelocities.Basis,
        ForceVelocityProfiles.Basis,
        RunUpCurves.Basis,
        TrialsNeeded.Basis,
        ExerciseDemands.Basis,
        TrainingResponses.Basis,
    ];
}
