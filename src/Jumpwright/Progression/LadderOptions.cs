using Jumpwright.Safety;

namespace Jumpwright.Progression;

/// <summary>
/// How sure and how recent evidence must be before a rung opens, and how a rung is earned and fades. All defaults are
/// <c>common practice</c> of cautious coaching; no trial stands behind any of these numbers.
/// </summary>
public sealed record LadderOptions
{
    /// <summary>The standard ones.</summary>
    public LadderOptions()
        : this(LimitBook.Standard) { }

    private LadderOptions(LimitBook limits)
    {
        SafetyProbability = limits["safety-probability"];
        PerformanceProbability = limits["performance-probability"];
        FreshDays = limits.Whole("test-stale");
        FreshDaysAfterInjury = limits.Whole("test-stale-after-injury");
        SessionsToOwn = limits.Whole("sessions-to-own");
        OwnWithinDays = limits.Whole("own-within");
        PainNextMorningAtMost = limits["clean-next-morning-pain"];
        PainDuringAtMost = limits["stop-pain-during"];
        FadesToOpenAfterDays = limits.Whole("fades-to-open");
        FadesToClosedAfterDays = limits.Whole("fades-to-closed");
        LandingFaultsThatHold = limits.Whole("landing-faults-that-hold");
        LandingScreenFailsAbove = limits.Whole("landing-screen-fails-above");
        DaysOff = limits.Whole("days-off");
        SessionsToComeBack = limits.Whole("sessions-to-come-back");
    }

    /// <summary>The defaults.</summary>
    public static LadderOptions Default { get; } = new();

    /// <summary>The same from a book of limits in which some are set otherwise.</summary>
    public static LadderOptions From(LimitBook limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return new(limits);
    }

    /// <summary>Where they come from.</summary>
    public string SourceId { get; init; } = "common-practice";

    /// <summary>Probability at which a safety criterion counts as met; above 0.5, at most 1.</summary>
    public double SafetyProbability { get; init; }

    /// <summary>Probability at which a performance criterion counts as met; above 0.5, at most 1.</summary>
    public double PerformanceProbability { get; init; }

    /// <summary>Days after which a test no longer speaks; a training block of six weeks.</summary>
    public int FreshDays { get; init; }

    /// <summary>The same after an injury or operation, when things change quickly.</summary>
    public int FreshDaysAfterInjury { get; init; }

    /// <summary>Clean sessions that earn an exercise.</summary>
    public int SessionsToOwn { get; init; }

    /// <summary>Days within which those sessions must lie.</summary>
    public int OwnWithinDays { get; init; }

    /// <summary>Next-morning pain (0 to 10) up to which a session counts as clean.</summary>
    public double PainNextMorningAtMost { get; init; }

    /// <summary>Pain in the work (0 to 10) up to which a session counts as clean: what stops a set spoils the session.</summary>
    public double PainDuringAtMost { get; init; }

    /// <summary>Days without the exercise or a harder one after which it is only open.</summary>
    public int FadesToOpenAfterDays { get; init; }

    /// <summary>Days without it after which it is closed until a step before it was done cleanly again.</summary>
    public int FadesToClosedAfterDays { get; init; }

    /// <summary>
    /// Landing faults logged in the last session that hold everything beyond landing back; as many in one exercise
    /// start the count of its clean sessions anew. One fault only keeps a session from counting.
    /// </summary>
    public int LandingFaultsThatHold { get; init; }

    /// <summary>Landing-screen faults above which the screen is failed (the lowest band of Padua 2009, from memory).</summary>
    public int LandingScreenFailsAbove { get; init; }

    /// <summary>Days off after which an athlete begins one stage lower.</summary>
    public int DaysOff { get; init; }

    /// <summary>Sessions after time off or illness until the stage comes back.</summary>
    public int SessionsToComeBack { get; init; }
}
