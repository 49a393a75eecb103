namespace Jumpwright.Calculators;

/// <summary>Whether a condition is met. What is not known closes like what is not met.</summary>
public enum CheckState
{
    NotKnown,
    NotMet,
    Met,
}
