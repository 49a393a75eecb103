namespace Jumpwright.Storage.Folders;

/// <summary>What a fault in a squad folder does until somebody corrects it. Unknown closes, never opens.</summary>
public enum ProblemWeight
{
    /// <summary>Repaired without guessing, or ignored without loss.</summary>
    Note,

    /// <summary>A row or a value was left out; what it would have shown counts as not tested.</summary>
    LeftOut,

    /// <summary>Nothing may be planned for the athlete until it is corrected.</summary>
    ClosesAthlete,

    /// <summary>Nothing may be planned for anybody until it is corrected.</summary>
    StopsPlanning,
}
