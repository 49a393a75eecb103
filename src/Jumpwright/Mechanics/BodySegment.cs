namespace Jumpwright.Mechanics;

/// <summary>A segment of the body.</summary>
/// <param name="Name">In a word; a limb's segment is one side's.</param>
/// <param name="Sides">1, or 2 for a segment on each side.</param>
/// <param name="MassFraction">Of body mass, one side.</param>
/// <param name="CentreFraction">Centre of mass from the proximal end, of the segment's length.</param>
public sealed record BodySegment(string Name, int Sides, double MassFraction, double CentreFraction);
