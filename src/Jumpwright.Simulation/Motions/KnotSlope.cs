namespace Jumpwright.Simulation.Motions;

/// <summary>How the slope of the acceleration at a knot follows from the knots beside it.</summary>
public enum KnotSlope
{
    /// <summary>Zero: a turning point.</summary>
    Flat,

    /// <summary>That of the chord between the two neighbours.</summary>
    Through,

    /// <summary>A multiple of the chord to the only neighbour (first and last knot).</summary>
    Chord,

    /// <summary>Given, m/s³.</summary>
    Given,
}
