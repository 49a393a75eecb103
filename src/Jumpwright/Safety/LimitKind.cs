namespace Jumpwright.Safety;

/// <summary>How firm a limit is.</summary>
public enum LimitKind
{
    /// <summary>A rule of the house about health: can be tightened, never loosened.</summary>
    House,

    /// <summary>A published value: can be overridden with name, reason and expiry.</summary>
    Published,

    /// <summary>Agreed among experts: can be overridden with name, reason and expiry.</summary>
    Consensus,

    /// <summary>Common practice: can be overridden with name, reason and expiry.</summary>
    CommonPractice,

    /// <summary>A matter of taste: set freely.</summary>
    Preference,
}
