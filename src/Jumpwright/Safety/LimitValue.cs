using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>One limit as the data file says it.</summary>
/// <param name="Id">Kebab-case id.</param>
/// <param name="Value">In its unit.</param>
/// <param name="Unit">Symbol.</param>
/// <param name="Kind">How firm it is.</param>
/// <param name="Sense">Which way it closes.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Says">What it limits, in one sentence.</param>
public sealed record LimitValue(
    string Id,
    double Value,
    string Unit,
    LimitKind Kind,
    LimitSense Sense,
    Source Source,
    string Says
)
{
    /// <summary>The least that it may be set to.</summary>
    public double Least { get; init; }

    /// <summary>The most that it may be set to; null where there is no end.</summary>
    public double? Most { get; init; }

    /// <summary>Whether it may be set to that at all, by whoever may.</summary>
    public bool Allows(double value) => value >= Least && !(value > Most);

    /// <summary>What it limits, for whoever reads another language.</summary>
    public Sentence Said => Sentence.OfCatalogue(Says);

    /// <summary>True when the other value closes more than this one.</summary>
    public bool IsTightenedBy(double other) => Sense == LimitSense.AtMost ? other < Value : other > Value;

    /// <summary>True when the other value closes less than this one.</summary>
    public bool IsLoosenedBy(double other) => Sense == LimitSense.AtMost ? other > Value : other < Value;
}
