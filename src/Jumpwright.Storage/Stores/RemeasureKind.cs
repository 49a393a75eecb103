namespace Jumpwright.Storage.Stores;

/// <summary>What kind of thing measuring again would change.</summary>
public enum RemeasureKind
{
    /// <summary>A measure's value, doubt or method, or whether it is given at all.</summary>
    Measure,

    /// <summary>A recording that was measured would be refused.</summary>
    NewlyRefused,

    /// <summary>A recording that was refused would be measured.</summary>
    NewlyMeasured,

    /// <summary>A refused recording would be refused in other words.</summary>
    OtherRefusal,

    /// <summary>A recording would hold another number of trials.</summary>
    Trials,

    /// <summary>A measure would be named doubtful, or no more.</summary>
    Doubtful,

    /// <summary>Events, contacts or warnings.</summary>
    Other,
}
