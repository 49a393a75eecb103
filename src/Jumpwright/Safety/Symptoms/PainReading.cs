using Jumpwright.Quantities;

namespace Jumpwright.Safety.Symptoms;

/// <summary>A rule and the tissue it guards.</summary>
internal readonly record struct PainReading(PainRuleKind Kind, Tissue Tissue);
