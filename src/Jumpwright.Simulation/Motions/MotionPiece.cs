namespace Jumpwright.Simulation.Motions;

/// <summary>A stretch of motion with one formula. Its end is the next piece's start.</summary>
/// <param name="FromS">First instant, s.</param>
/// <param name="ToS">Last instant, s.</param>
/// <param name="InContact">False in free flight, where the plate carries nothing.</param>
public abstract record MotionPiece(double FromS, double ToS, bool InContact)
{
    public abstract BodyState At(double timeS);
}
