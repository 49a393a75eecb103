namespace Jumpwright.Statistics;

/// <summary>How far a level moved, and how sure that is.</summary>
/// <param name="Change">Later less earlier, in the measure's unit.</param>
/// <param name="Sd">Its standard uncertainty.</param>
/// <param name="Rose">Probability that it rose by more than the smallest worthwhile change.</param>
/// <param name="Fell">Probability that it fell by more than that.</param>
/// <param name="SmallestWorthwhile">That change.</param>
public sealed record LevelChange(double Change, double Sd, double Rose, double Fell, double SmallestWorthwhile);
