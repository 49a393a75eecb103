namespace Jumpwright.Calculators.RunUps;

/// <summary>How a running jump takes off: two baselines, never mixed.</summary>
public enum TakeOffFoot
{
    TwoFeet,
    OneFoot,
}
