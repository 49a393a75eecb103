namespace Jumpwright.Progression;

/// <summary>
/// How sure and how recent evidence must be before a rung opens, and how a rung is earned and fades. All defaults are
/// <c>common practice</c> of cautious coaching; no trial stands behind any of these numbers.
/// </summary>
public sealed record LadderOptions
{
    /// <summary>The defaults.</summary>
    public static LadderOptions Default { get; } = new();

    /// <summary>Where they come from.</summary>
    public string SourceId { get; init; } = "common-practice";

    /// <summary>Probability at which a safety criterion counts as met; above 0.5, at most 1.</summary>
    public double SafetyProbability { get; init; } = 0.90;

    /// <summary>Probability at which a performance criterion counts as met; above 0.5, at most 1.</summary>
    public double PerformanceProbability { get; init; } = 0.75;

    /// <summary>Days after which a test no longer speaks; a training block of six weeks.</summary>
    public int FreshDays { get; init; } = 42;

    /// <summary>The same after an injury or operation, when things change quickly.</summary>
    public int FreshDaysAfterInjury { get; init; } = 14;

    /// <summary>Clean sessions that earn an exercise.</summary>
    public int SessionsToOwn { get; init; } = 2;

    /// <summary>Days within which those sessions must lie.</summary>
    public int OwnWithinDays { get; init; } = 21;

    /// <summary>Next-morning pain (0 to 10) up to which a session counts as clean.</summary>
    public double PainNextMorningAtMost { get; init; } = 2;

    /// <summary>Days without the exercise or a harder one after which it is only open.</summary>
    public int FadesToOpenAfterDays { get; init; } = 21;

    /// <summary>Days without it after which it is closed until a step before it was done cleanly again.</summary>
    public int FadesToClosedAfterDays { get; init; } = 42;

    /// <summary>
    /// Landing faults logged in the last session that hold everything beyond landing back; as many in one exercise
    /// start the count of its clean sessions anew. One fault only keeps a session from counting.
    /// </summary>
    public int LandingFaultsThatHold { get; init; } = 2;

    /// <summary>Landing-screen faults above which the screen is failed (the lowest band of Padua 2009, from memory).</summary>
    public int LandingScreenFailsAbove { get; init; } = 6;

    /// <summary>Days off after which an athlete begins one stage lower.</summary>
    public int DaysOff { get; init; } = 14;

    /// <summary>Sessions after time off or illness until the stage comes back.</summary>
    public int SessionsToComeBack { get; init; } = 2;
}
