namespace Jumpwright.Calculators.Bands;

/// <summary>What holds the lower end of a band.</summary>
public enum AnchorKind
{
    /// <summary>Nobody said: not safe.</summary>
    Unknown,

    /// <summary>One heavy weight with flat sides, which does not roll.</summary>
    FlatSided,

    /// <summary>Two weights crossed, which do not roll; their mass together.</summary>
    TwoCrossed,

    /// <summary>Rolls: not safe.</summary>
    Round,
}
