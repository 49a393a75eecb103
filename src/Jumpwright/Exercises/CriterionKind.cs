namespace Jumpwright.Exercises;

/// <summary>Whether a criterion guards health (met at probability 0.9 or more) or asks for performance (0.75).</summary>
public enum CriterionKind
{
    Safety,
    Performance,
}
