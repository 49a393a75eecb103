namespace Jumpwright.Plans;

/// <summary>Limits that hold for the whole squad. Each names where its value comes from.</summary>
public sealed record SquadLimits
{
    /// <summary>Minutes at the start of every session for roll call and general warm-up; no station runs then. House rule.</summary>
    public double OpeningMinutes { get; init; } = 5;

    /// <summary>Minutes to walk to a station, set it up and do a first submaximal try, before every item. House rule.</summary>
    public double ChangeOverMinutes { get; init; } = 1;

    /// <summary>Minutes of every session kept free for waiting at stations: an athlete's own work fills no more than the rest. House rule.</summary>
    public double WaitingMinutes { get; init; } = 4;

    /// <summary>Share of its working minutes in the session that a piece of kit is planned for. House rule.</summary>
    public double KitShareAtMost { get; init; } = 0.7;

    /// <summary>Share of its working minutes in the session that a piece of kit is planned for by work that must be done fresh. House rule.</summary>
    public double FreshKitShareAtMost { get; init; } = 0.5;

    /// <summary>What must be done fresh begins within this share of the session's working time. House rule.</summary>
    public double FreshWithinShare { get; init; } = 2.0 / 3;

    /// <summary>No high-intensity work on the day of a fixture and on so many days before it. Common practice.</summary>
    public int HighIntensityDaysBeforeFixture { get; init; } = 1;

    /// <summary>No exercise of the top demand tier within so many hours before or after a fixture. Common practice.</summary>
    public int TopTierHoursRoundFixture { get; init; } = 48;

    /// <summary>Least rest between heavy and light of a contrast pair, s: 3 min. Common practice, disputed.</summary>
    public int PairRestAtLeastS { get; init; } = 180;

    /// <summary>Most rest between heavy and light of a contrast pair, s: 7 min. Common practice, disputed.</summary>
    public int PairRestAtMostS { get; init; } = 420;
}
