namespace Jumpwright.Quantities;

/// <summary>What kind of authority stands behind a formula, threshold or coefficient.</summary>
public enum SourceKind
{
    /// <summary>A paper, book or standard that can be looked up.</summary>
    Published,

    /// <summary>A consensus or handbook statement.</summary>
    Consensus,

    /// <summary>What the trade commonly does; no trial stands behind it.</summary>
    CommonPractice,

    /// <summary>A rule of this house, chosen for caution.</summary>
    House,
}
