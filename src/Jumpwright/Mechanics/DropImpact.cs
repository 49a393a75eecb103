namespace Jumpwright.Mechanics;

/// <summary>Peak ground force of a landing from another height, by how fast one comes down.</summary>
public static class DropImpact
{
    /// <summary>
    /// Peak force on one leg, body weights, for a drop of <paramref name="dropM"/> where it is known for one of
    /// <paramref name="knownDropM"/>: what exceeds the body's own weight grows with the speed at contact, √(2gh), as long as the
    /// landing takes the same time. A leg that yields more takes less, a stiff one more. Estimate of physics (momentum), not measured.
    /// </summary>
    /// <param name="knownBodyWeights">Known peak on one leg, body weights.</param>
    /// <param name="knownDropM">The drop it is known for, m, above 0.</param>
    /// <param name="dropM">The drop asked about, m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A height that is not positive.</exception>
    public static double AtDropBodyWeights(double knownBodyWeights, double knownDropM, double dropM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(knownDropM);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dropM);
        // Standing on two legs, one leg bears half a body weight: that part does not grow with the drop.
        const double Standing = 0.5;
        return Standing + ((knownBodyWeights - Standing) * Math.Sqrt(dropM / knownDropM));
    }
}
