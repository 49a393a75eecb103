namespace Jumpwright.Progression;

/// <summary>What is known of one criterion. Only <see cref="Met"/> opens.</summary>
public enum CriterionVerdict
{
    NotTested,
    Stale,
    Unclear,
    NotMet,
    Met,
}
