namespace Jumpwright.Athletes;

/// <summary>How used an athlete is to jump training. Unknown is treated as the least used.</summary>
public enum TrainingLevel
{
    Unknown,
    Beginner,
    Intermediate,
    Advanced,
}
