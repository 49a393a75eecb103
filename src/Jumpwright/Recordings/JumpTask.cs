namespace Jumpwright.Recordings;

/// <summary>What the athlete was asked to do on the device.</summary>
public enum JumpTask
{
    CountermovementJump,
    SquatJump,
    LoadedJump,
    DropJump,
    RepeatedHops,
    DropLanding,
    SnapDown,
    ApproachJump,
    BoxJump,
}
