namespace Jumpwright.Simulation.Motions;

/// <summary>Centre of mass at one instant, up positive: displacement from quiet standing, m; velocity, m/s; acceleration, m/s².</summary>
public readonly record struct BodyState(double DisplacementM, double VelocityMS, double AccelerationMS2);
