namespace Jumpwright.Progression;

/// <summary>What closes an exercise or a test on a day.</summary>
public enum ClosedBy
{
    /// <summary>A ruling of safety, or of the floor and the air.</summary>
    Ruling,

    /// <summary>A condition of the ladder that is not met or not tested.</summary>
    Ladder,

    /// <summary>The squad has not the kit for it.</summary>
    Kit,

    /// <summary>Nobody here knows what it is.</summary>
    NotKnown,
}
