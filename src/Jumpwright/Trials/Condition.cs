namespace Jumpwright.Trials;

/// <summary>Something that was let in about a stay, and what was let in before it.</summary>
/// <param name="Before">What was let in before; null for the first.</param>
/// <param name="Shared">Covariance of every unknown with the number that it speaks of.</param>
/// <param name="Variance">Variance of that number's difference from what it is held to be.</param>
internal sealed record Condition(Condition? Before, ArraySegment<double> Shared, double Variance);
