namespace Jumpwright.Trials;

/// <summary>The names of the contract (§2). Each name has one meaning; a rival reading gets its own name.</summary>
public static class MeasureNames
{
    public const string BodyWeight = "body_weight_N";
    public const string SystemWeight = "system_weight_N";
    public const string JumpHeight = "jump_height_m";
    public const string JumpHeightFlightTime = "jump_height_flight_time_m";
    public const string TakeOffVelocity = "take_off_velocity_m_s";
    public const string FlightTime = "flight_time_s";
    public const string ContactTime = "contact_time_s";
    public const string DropHeight = "drop_height_m";
    public const string ReactiveStrengthIndex = "reactive_strength_index";
    public const string ReactiveStrengthIndexModified = "reactive_strength_index_modified";
    public const string TimeToTakeOff = "time_to_take_off_s";
    public const string CountermovementDepth = "countermovement_depth_m";
    public const string UnwantedDip = "unwanted_dip_pct";
    public const string PeakPropulsivePower = "peak_propulsive_power_W";
    public const string MeanPropulsivePower = "mean_propulsive_power_W";
    public const string PeakForce = "peak_force_N";
    public const string PeakLandingForce = "peak_landing_force_N";

    /// <summary>Landing: steepest rise of force over 10 ms, N/s. A name of our own, beside the contract's.</summary>
    public const string PeakLoadingRate = "peak_loading_rate_N_s";

    /// <summary>
    /// Landing: net impulse from touch-down to the lowest point, N s: what the landing takes from the body, mass times the
    /// velocity at touch-down (momentum theorem). A name of our own, beside the contract's.
    /// </summary>
    public const string LandingNetImpulse = "landing_net_impulse_N_s";
    public const string BrakingDuration = "braking_duration_s";
    public const string PropulsionDuration = "propulsion_duration_s";
    public const string VerticalStiffness = "vertical_stiffness_N_m";
    public const string VerticalStiffnessTimeModel = "vertical_stiffness_time_model_N_m";
    public const string TimeToStabilisation = "time_to_stabilisation_s";
    public const string AsymmetryPropulsiveImpulse = "asymmetry_propulsive_impulse_pct";

    /// <summary>As the propulsive one, over braking: peak downward velocity, or touch-down, to the lowest point. A name of our own.</summary>
    public const string AsymmetryBrakingImpulse = "asymmetry_braking_impulse_pct";

    /// <summary>As the propulsive one, over the landing: touch-down to the lowest point. A name of our own.</summary>
    public const string AsymmetryLandingImpulse = "asymmetry_landing_impulse_pct";
    public const string HopsFound = "hops_found";
    public const string HopsCounted = "hops_counted";
}
