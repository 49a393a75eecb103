namespace Jumpwright.Trials;

/// <summary>One of the ways in which something is usually so.</summary>
/// <param name="Doubt">Standard deviation from the usual value in that way.</param>
/// <param name="Part">Part of all cases.</param>
/// <param name="Rare">True for the way that is worth saying.</param>
internal readonly record struct UsualWay(double Doubt, double Part, bool Rare = false);
