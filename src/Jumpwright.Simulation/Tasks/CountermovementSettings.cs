namespace Jumpwright.Simulation.Tasks;

/// <summary>A countermovement jump.</summary>
public sealed record CountermovementSettings : JumperSettings
{
    public CountermovementSettings() { }

    /// <summary>The same jumper.</summary>
    public CountermovementSettings(JumperSettings jumper)
        : base(jumper) { }

    /// <summary>Velocity at take-off, m/s; the height is its square over 2 g.</summary>
    public double TakeOffVelocityMS { get; init; } = 2.6;

    /// <summary>Fall from quiet standing to the lowest point, m.</summary>
    public double DepthM { get; init; } = 0.3;

    /// <summary>About the fastest fall, m/s: low is a slow dip, high an almost free fall.</summary>
    public double FallSpeedMS { get; init; } = 1.2;

    public PushShape Shape { get; init; } = PushShape.TwoPeaks;

    /// <summary>Lands on a box off the plate, or beside it.</summary>
    public bool LandsElsewhere { get; init; }

    /// <summary>A small hop after the landing, with that take-off velocity, m/s; zero for none.</summary>
    public double BounceVelocityMS { get; init; }
}
