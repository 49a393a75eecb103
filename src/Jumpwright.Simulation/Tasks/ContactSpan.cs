namespace Jumpwright.Simulation.Tasks;

/// <summary>One contact with the plate: from touch-down (or onset) to take-off, s.</summary>
public readonly record struct ContactSpan(double FromS, double ToS);
