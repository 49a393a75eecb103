using Jumpwright.Quantities;

namespace Jumpwright.Dosing;

/// <summary>The numbers behind a dose, each with its source.</summary>
internal static class DoseRules
{
    internal static readonly Coefficient HeightLoss = Percent("stop-height-loss", 10, "common-practice");
    internal static readonly Coefficient ContactGain = Percent("stop-contact-gain", 10, "common-practice");

    internal static readonly Coefficient LandingFaults = new(
        "stop-landing-faults",
        2,
        new Unit("faults"),
        null,
        Bibliography.Get("common-practice")
    );

    internal static readonly Coefficient PainDuring = new(
        "stop-pain-during",
        2,
        Unit.One,
        null,
        Bibliography.Get("silbernagel-2007"),
        "Pages draw the free zone to 2 or to 3 of 10."
    );

    /// <summary>How far above the highest drop measured for the athlete a depth jump may go.</summary>
    internal static readonly Coefficient DropStep = Metres("drop-step", 0.10, "house-rule");

    internal static readonly Coefficient ContactCeiling = new(
        "drop-contact-ceiling",
        0.25,
        Unit.Second,
        null,
        Bibliography.Get("schmidtbleicher-1992"),
        "A label for fast stretch–shortening, not a cliff in physiology."
    );

    internal static readonly Coefficient BoxClearance = Metres("box-clearance", 0.10, "house-rule");
    internal static readonly Coefficient BoxStep = Metres("box-step", 0.10, "house-rule");

    /// <summary>Centre of mass in standing less that in a half squat, as a share of stature.</summary>
    internal static readonly Coefficient HalfSquatFall = new(
        "half-squat-fall",
        0.18,
        Unit.One,
        null,
        Bibliography.Get("winter-segments"),
        "0.56 of stature standing and 0.38 in a half squat, from memory; build and posture move both."
    );

    /// <summary>Of body mass: the light end that still counts as loaded.</summary>
    internal static readonly Coefficient LightLoad = new(
        "light-load",
        0.20,
        Unit.One,
        null,
        Bibliography.Get("suchomel-2019"),
        "Relative power was highest at 40 % in one sample; one best load for all is disputed."
    );

    /// <summary>A light hex bar itself.</summary>
    internal static readonly Coefficient LightestBar = new(
        "lightest-hex-bar",
        15,
        Unit.Kilogram,
        null,
        Bibliography.Get("common-practice")
    );

    /// <summary>How old a test may be that a load is taken from.</summary>
    internal static readonly Coefficient FreshDays = new(
        "load-test-fresh-days",
        42,
        new Unit("d"),
        null,
        Bibliography.Get("common-practice")
    );

    private static Coefficient Percent(string id, double value, string source) =>
        new(id, value, Unit.Percent, null, Bibliography.Get(source));

    private static Coefficient Metres(string id, double value, string source) =>
        new(id, value, Unit.Metre, null, Bibliography.Get(source));
}
