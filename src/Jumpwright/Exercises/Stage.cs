namespace Jumpwright.Exercises;

/// <summary>Stages of the usual progression, in the trade's order.</summary>
public enum Stage
{
    Landing,
    AnkleStiffness,
    PushToBox,
    FloorJump,
    Resisted,
    Shock,
    ContinuousSingleLeg,
    RunUp,
}
