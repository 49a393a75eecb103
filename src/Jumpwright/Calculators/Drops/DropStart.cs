namespace Jumpwright.Calculators.Drops;

/// <summary>How an athlete leaves a box.</summary>
public enum DropStart
{
    Step,
    Jump,
    Unknown,
}
