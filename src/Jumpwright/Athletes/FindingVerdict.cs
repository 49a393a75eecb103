using Jumpwright.Quantities;

namespace Jumpwright.Athletes;

/// <summary>What is known of a quality.</summary>
public enum FindingVerdict
{
    NotTested,
    Unclear,
    Sound,
    Limits,
}
