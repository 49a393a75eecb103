using System.Collections.Immutable;

namespace Jumpwright.Trials;

/// <summary>What is drawn of a force trial: force, velocity and displacement over time, with its phases.</summary>
/// <param name="TimeS">Time, s.</param>
/// <param name="ForceN">Total vertical force with the plate's zero corrected, N.</param>
/// <param name="LeftN">Left plate, N; empty with one plate.</param>
/// <param name="RightN">Right plate, N; empty with one plate.</param>
/// <param name="VelocityMS">Velocity of the centre of mass, m/s, up positive; empty where no weight was got.</param>
/// <param name="DisplacementM">Displacement from quiet standing, m, up positive; empty where no weight was got.</param>
/// <param name="WeightN">System weight, N; null where none was got.</param>
/// <param name="Phases">Weighing, unweighting, braking, propulsion, flight, landing, as far as they apply.</param>
public sealed record MotionTrace(
    ImmutableArray<double> TimeS,
    ImmutableArray<double> ForceN,
    ImmutableArray<double> LeftN,
    ImmutableArray<double> RightN,
    ImmutableArray<double> VelocityMS,
    ImmutableArray<double> DisplacementM,
    double? WeightN,
    ImmutableArray<Phase> Phases
);
