namespace Jumpwright.App.Desk.Journals;

/// <summary>What is written down in the pages. A kind that an older program does not know is kept and passed over.</summary>
internal static class EntryKinds
{
    /// <summary>A set was done, or was logged by mistake.</summary>
    public const string Set = "set";

    /// <summary>Pain, 0 to 10.</summary>
    public const string Pain = "pain";

    /// <summary>A stop rule spoke and work on an exercise ended.</summary>
    public const string Stop = "stop";

    /// <summary>Roll call: here or not.</summary>
    public const string Here = "here";

    /// <summary>Events of a trial set by hand, or given back to measuring.</summary>
    public const string Correction = "correction";

    /// <summary>A parent's consent for a minor, or its end.</summary>
    public const string Consent = "consent";

    /// <summary>Files that were taken in through the pages.</summary>
    public const string Intake = "intake";

    /// <summary>An intake that was taken back.</summary>
    public const string IntakeUndone = "intake-undone";

    /// <summary>An item of the plan locked, or no longer.</summary>
    public const string Lock = "lock";

    /// <summary>An item or a whole session that an athlete does not do.</summary>
    public const string TakenOut = "taken-out";

    /// <summary>A session moved to another time.</summary>
    public const string Moved = "moved";

    /// <summary>How hard a session was, and how long.</summary>
    public const string Effort = "effort";

    /// <summary>A stop sign that somebody saw or felt.</summary>
    public const string Sign = "sign";

    /// <summary>A stop sign written in the pages was written wrongly, says a person by name.</summary>
    public const string SignTakenBack = "sign-taken-back";

    /// <summary>What a person allows or forbids, by name and day.</summary>
    public const string Restriction = "restriction";

    /// <summary>A restriction written in the pages was written wrongly, says a person by name.</summary>
    public const string RestrictionTakenBack = "restriction-taken-back";

    /// <summary>A restriction written in the pages was given a last day by a licensed person.</summary>
    public const string RestrictionEnded = "restriction-ended";

    /// <summary>An athlete's body mass or stature changed.</summary>
    public const string Body = "body";

    /// <summary>A pain that was tapped by mistake, taken back by a person on its own day.</summary>
    public const string PainWithdrawn = "pain-withdrawn";

    /// <summary>Where a pain was that had been said without a place.</summary>
    public const string PainPlace = "pain-place";

    /// <summary>Kit at hand on the day of a session; about nobody.</summary>
    public const string Kit = "kit";

    /// <summary>Minutes that there are on the day of a session; about nobody.</summary>
    public const string Minutes = "minutes";

    /// <summary>Kinds that the floor view may hand in.</summary>
    public static IReadOnlySet<string> OfTheFloor { get; } =
        new HashSet<string>(StringComparer.Ordinal)
        {
            Set,
            Pain,
            Stop,
            Here,
            Effort,
            Kit,
            Minutes,
            PainWithdrawn,
            PainPlace,
        };
}
