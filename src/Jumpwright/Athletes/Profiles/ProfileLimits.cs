using Jumpwright.Quantities;

namespace Jumpwright.Athletes.Profiles;

/// <summary>The thresholds behind a profile, each with its source and, where there is one, its dispute.</summary>
internal static class ProfileLimits
{
    /// <summary>A finding is called one way or the other at this probability (performance).</summary>
    internal static readonly Coefficient Sure = new(
        "finding-sure-at",
        0.75,
        Unit.One,
        null,
        Bibliography.Get("common-practice")
    );

    /// <summary>What guards health is called sound only at this probability.</summary>
    internal static readonly Coefficient SureOfHealth = new(
        "finding-sure-of-health-at",
        0.90,
        Unit.One,
        null,
        Bibliography.Get("common-practice")
    );

    internal static readonly Coefficient FreshDays = new(
        "fresh-days",
        42,
        new Unit("d"),
        null,
        Bibliography.Get("common-practice")
    );

    internal static readonly Coefficient FreshDaysAfterOperation = new(
        "fresh-days-after-operation",
        14,
        new Unit("d"),
        null,
        Bibliography.Get("common-practice")
    );

    internal static readonly Coefficient LandingFaults = new(
        "landing-screen-faults",
        4,
        new Unit("faults"),
        1.0,
        Bibliography.Get("padua-2009"),
        "One point lies inside the rater's error (Everard; Hanzlíková 2020); a screen does not predict one person's injury."
    );

    internal static readonly Coefficient LandingFaultsLogged = new(
        "landing-faults-logged",
        2,
        new Unit("faults"),
        null,
        Bibliography.Get("common-practice")
    );

    internal static readonly Coefficient HopContact = new(
        "hop-contact",
        0.20,
        Unit.Second,
        null,
        Bibliography.Get("common-practice")
    );

    internal static readonly Coefficient HeelRaises = new(
        "heel-raises",
        20,
        new Unit("reps"),
        2,
        Bibliography.Get("common-practice")
    );

    internal static readonly Coefficient DropContact = new(
        "drop-jump-contact",
        0.25,
        Unit.Second,
        null,
        Bibliography.Get("schmidtbleicher-1992"),
        "A label for fast and slow stretch–shortening, not a cliff in physiology."
    );

    internal static readonly Coefficient ReactiveStrength = new(
        "drop-jump-rsi",
        1.5,
        Unit.MetrePerSecond,
        null,
        Bibliography.Get("common-practice"),
        "One index hides height and contact time, which trade against each other: both stand beside it."
    );

    internal static readonly Coefficient SquatJumpShareLow = new(
        "squat-jump-share-low",
        85,
        Unit.Percent,
        null,
        Bibliography.Get("common-practice"),
        "The ratio of two noisy heights is noisier than either; it describes and does not prescribe by itself."
    );

    internal static readonly Coefficient SquatJumpShareHigh = new(
        "squat-jump-share-high",
        95,
        Unit.Percent,
        null,
        Bibliography.Get("common-practice"),
        "The ratio of two noisy heights is noisier than either; it describes and does not prescribe by itself."
    );

    /// <summary>A squat jump that dips more than this below weight is no squat jump (contracts §2).</summary>
    internal static readonly Coefficient UnwantedDip = new(
        "unwanted-dip",
        10,
        Unit.Percent,
        null,
        Bibliography.Get("common-practice")
    );

    internal static readonly Coefficient HopSymmetry = new(
        "hop-symmetry",
        90,
        Unit.Percent,
        null,
        Bibliography.Get("grindem-2016"),
        "A consensus line inside the test's own error; many healthy athletes miss it (Markström 2022), and it hides a good leg that lost as well."
    );

    /// <summary>5 % of the sum is about 10 % between the legs.</summary>
    internal static readonly Coefficient ImpulseAsymmetry = new(
        "impulse-asymmetry",
        5,
        Unit.Percent,
        null,
        Bibliography.Get("common-practice"),
        "Thresholds of asymmetry have little prospective support (Bishop 2018)."
    );

    internal static readonly Coefficient RunUpGain = new(
        "run-up-gain",
        5,
        Unit.Percent,
        null,
        Bibliography.Get("common-practice"),
        "One small sample gained 15 % over the standing jump; each athlete has a best speed."
    );
}
