using System.Collections.Immutable;

namespace Jumpwright.Mechanics;

/// <summary>
/// Segment tables. De Leva 1996, J Biomech 29:1223–1230 (read in the notebook BodySegmentParameters of BMClab/BMC), and
/// Dempster's values as Winter gives them (same notebook); the lengths as fractions of stature are from memory. The two models
/// differ by 40 % on the thigh's mass.
/// </summary>
public static class BodySegments
{
    /// <summary>Foot (ankle) height, of stature.</summary>
    public const double FootHeightFraction = 0.039;

    /// <summary>Shank length, of stature.</summary>
    public const double ShankFraction = 0.246;

    /// <summary>Thigh length, of stature.</summary>
    public const double ThighFraction = 0.245;

    /// <summary>Hip height, of stature.</summary>
    public const double HipHeightFraction = 0.530;

    /// <summary>Shoulder height, of stature (from memory).</summary>
    public const double ShoulderHeightFraction = 0.818;

    /// <summary>De Leva, women.</summary>
    public static ImmutableArray<BodySegment> DeLevaWomen { get; } =
    [
        new("head", 1, .0668, .4841),
        new("trunk", 1, .4257, .4964),
        new("upper arm", 2, .0255, .5754),
        new("forearm", 2, .0138, .4559),
        new("hand", 2, .0056, .7474),
        new("thigh", 2, .1478, .3612),
        new("shank", 2, .0481, .4352),
        new("foot", 2, .0129, .4014),
    ];

    /// <summary>De Leva, men.</summary>
    public static ImmutableArray<BodySegment> DeLevaMen { get; } =
    [
        new("head", 1, .0694, .5002),
        new("trunk", 1, .4346, .5138),
        new("upper arm", 2, .0271, .5772),
        new("forearm", 2, .0162, .4574),
        new("hand", 2, .0061, .7900),
        new("thigh", 2, .1416, .4095),
        new("shank", 2, .0433, .4395),
        new("foot", 2, .0137, .4415),
    ];

    /// <summary>Dempster, as Winter gives it; head, arms and trunk as one, from the hip towards the shoulder.</summary>
    public static ImmutableArray<BodySegment> DempsterWinter { get; } =
    [
        new("head, arms and trunk", 1, .678, .626),
        new("thigh", 2, .100, .433),
        new("shank", 2, .0465, .433),
        new("foot", 2, .0145, .500),
    ];

    /// <summary>All of it, of body mass: 1 but for rounding.</summary>
    public static double MassSum(ImmutableArray<BodySegment> table) => table.Sum(s => s.Sides * s.MassFraction);
}
