namespace Jumpwright.Statistics;

/// <summary>What a day's session said of a level.</summary>
/// <param name="Day">Day number; only differences count.</param>
/// <param name="Value">Mean of the session's trials.</param>
/// <param name="NoiseVariance">Variance of that mean about the level.</param>
public readonly record struct LevelObservation(double Day, double Value, double NoiseVariance);
