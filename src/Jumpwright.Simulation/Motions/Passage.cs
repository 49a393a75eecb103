namespace Jumpwright.Simulation.Motions;

/// <summary>What the motion must do at a knot, exactly. Null leaves it open.</summary>
/// <param name="Knot">Index of the knot.</param>
/// <param name="VelocityMS">Velocity there, m/s.</param>
/// <param name="DisplacementM">Displacement there, m.</param>
public readonly record struct Passage(int Knot, double? VelocityMS = null, double? DisplacementM = null);
