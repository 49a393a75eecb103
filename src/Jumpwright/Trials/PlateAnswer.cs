namespace Jumpwright.Trials;

/// <summary>How a plate that swings may answer to a force.</summary>
/// <param name="Hz">Undamped frequency, Hz.</param>
/// <param name="Damping">Part of critical damping.</param>
/// <param name="Resonates">
/// True: a spring and a damper between the feet and the sensors, so that every sample is the force as they pass it on, later by
/// 2ζ/ω and swinging after each corner. False: the force is read as it is, and a swing of any size comes on top after a take-off.
/// </param>
internal readonly record struct PlateAnswer(double Hz, double Damping, bool Resonates);
