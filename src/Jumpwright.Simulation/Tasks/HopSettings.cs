namespace Jumpwright.Simulation.Tasks;

/// <summary>A series of rebounds after a small jump.</summary>
public sealed record HopSettings : JumperSettings
{
    public HopSettings() { }

    /// <summary>The same jumper.</summary>
    public HopSettings(JumperSettings jumper)
        : base(jumper) { }

    /// <summary>How many rebounds.</summary>
    public int Hops { get; init; } = 10;

    /// <summary>Mean contact time, s; each hop varies a little.</summary>
    public double ContactS { get; init; } = 0.19;

    /// <summary>Mean rebound height, m; each hop varies a little.</summary>
    public double HeightM { get; init; } = 0.25;
}
