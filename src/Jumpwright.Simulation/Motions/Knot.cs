namespace Jumpwright.Simulation.Motions;

/// <summary>A point that the acceleration passes through.</summary>
/// <param name="TimeS">Time since the spline's start, s.</param>
/// <param name="ValueMS2">Acceleration wished for, m/s².</param>
/// <param name="Freedom">How far the solver may move the value, relative to the others; zero holds it.</param>
/// <param name="Slope">How the slope is set.</param>
/// <param name="SlopeValue">Multiple of the chord, or the given slope in m/s³.</param>
public readonly record struct Knot(
    double TimeS,
    double ValueMS2,
    double Freedom,
    KnotSlope Slope = KnotSlope.Flat,
    double SlopeValue = 0
);
