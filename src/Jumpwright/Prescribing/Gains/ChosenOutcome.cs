namespace Jumpwright.Prescribing.Gains;

/// <summary>What an athlete trains for.</summary>
public enum ChosenOutcome
{
    StandingJump,
    ApproachJumpTwoFeet,
    ApproachJumpOneFoot,

    /// <summary>Rebound in short contact: height of a drop jump.</summary>
    Rebound,

    /// <summary>Symmetric landing after injury.</summary>
    SymmetricLanding,
}
