namespace Jumpwright.Dosing;

/// <summary>When to stop, as data; the card's sentence is made from it.</summary>
public sealed record StopRule(
    double? HeightLossPct,
    double? ContactGainPct,
    int? LandingFaults,
    double PainDuringAbove,
    bool PainSiteNew
)
{
    /// <summary>The rule as one sentence for the card.</summary>
    public string Sentence() => throw new NotImplementedException();
}
