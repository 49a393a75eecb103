namespace Jumpwright.Simulation.Motions;

/// <summary>Standing (or holding a squat) with the sway of <see cref="Sway"/> about a fixed level.</summary>
/// <param name="LevelM">Level about which the centre of mass sways, m.</param>
/// <param name="Sway">The sway; it runs on the recording's time, so that a later stand continues it.</param>
public sealed record SwayPiece(double FromS, double ToS, double LevelM, Sway Sway) : MotionPiece(FromS, ToS, true)
{
    public override BodyState At(double timeS)
    {
        BodyState sway = Sway.At(timeS);
        return sway with { DisplacementM = sway.DisplacementM + LevelM };
    }
}
