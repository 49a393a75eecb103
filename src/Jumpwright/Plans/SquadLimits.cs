using Jumpwright.Safety;

namespace Jumpwright.Plans;

/// <summary>
/// Limits that hold for the whole squad, as the planner's request carries them. Their values, kinds and sources stand in
/// limits.json; these defaults are the standard ones.
/// </summary>
public sealed record SquadLimits
{
    /// <summary>The standard ones.</summary>
    public SquadLimits()
        : this(LimitBook.Standard) { }

    private SquadLimits(LimitBook limits)
    {
        OpeningMinutes = limits["opening-minutes"];
        ChangeOverMinutes = limits["change-over-minutes"];
        WaitingMinutes = limits["waiting-minutes"];
        KitShareAtMost = limits["kit-share"];
        FreshKitShareAtMost = limits["fresh-kit-share"];
        FreshWithinShare = limits["fresh-within-share"];
        HighIntensityDaysBeforeFixture = limits.Whole("high-intensity-days-before-fixture");
        TopTierHoursRoundFixture = limits.Whole("top-tier-hours-round-fixture");
        RecoveryShareBeforeFixture = limits["recovery-before-fixture"];
        PairRestAtLeastS = limits.Whole("pair-rest-least");
        PairRestAtMostS = limits.Whole("pair-rest-most");
        PointsEachGroup = limits["points-each-group"];
        PointsUnevenStaff = limits["points-uneven-staff"];
        PointsUnevenKit = limits["points-uneven-kit"];
    }

    /// <summary>Minutes at the start of every session for roll call and general warm-up; no station runs then.</summary>
    public double OpeningMinutes { get; init; }

    /// <summary>Minutes to walk to a station, set it up and do a first submaximal try, before every item.</summary>
    public double ChangeOverMinutes { get; init; }

    /// <summary>Minutes of every session kept free for waiting at stations: an athlete's own work fills no more than the rest.</summary>
    public double WaitingMinutes { get; init; }

    /// <summary>Share of its working minutes in the session that a piece of kit is planned for.</summary>
    public double KitShareAtMost { get; init; }

    /// <summary>Share of its working minutes in the session that a piece of kit is planned for by work that must be done fresh.</summary>
    public double FreshKitShareAtMost { get; init; }

    /// <summary>What must be done fresh begins within this share of the session's working time.</summary>
    public double FreshWithinShare { get; init; }

    /// <summary>No high-intensity work on the day of a fixture and on so many days before it.</summary>
    public int HighIntensityDaysBeforeFixture { get; init; }

    /// <summary>No exercise of the top demand tier within so many hours before or after a fixture.</summary>
    public int TopTierHoursRoundFixture { get; init; }

    /// <summary>Share of the hours of recovery that work asks for which pass before a fixture begins; 0: they need not.</summary>
    public double RecoveryShareBeforeFixture { get; init; }

    /// <summary>Least rest between heavy and light of a contrast pair, s.</summary>
    public int PairRestAtLeastS { get; init; }

    /// <summary>Most rest between heavy and light of a contrast pair, s.</summary>
    public int PairRestAtMostS { get; init; }

    /// <summary>Points off for every different exercise of a session.</summary>
    public double PointsEachGroup { get; init; }

    /// <summary>Points off for every exercise that a week's fullest session has more than its emptiest.</summary>
    public double PointsUnevenStaff { get; init; }

    /// <summary>Points off for every minute by which a kit is used more in one session of a week than in another.</summary>
    public double PointsUnevenKit { get; init; }

    /// <summary>From a book of limits in which some are set otherwise for the squad.</summary>
    public static SquadLimits From(LimitBook limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return new(limits);
    }
}
