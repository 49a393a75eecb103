namespace Jumpwright.Simulation.Tasks;

/// <summary>A squat jump: down, held, and up.</summary>
public sealed record SquatJumpSettings : JumperSettings
{
    public SquatJumpSettings() { }

    /// <summary>The same jumper.</summary>
    public SquatJumpSettings(JumperSettings jumper)
        : base(jumper) { }

    public double TakeOffVelocityMS { get; init; } = 2.4;

    /// <summary>How far below quiet standing the squat is held, m.</summary>
    public double DepthM { get; init; } = 0.35;

    /// <summary>How long the squat is held, s.</summary>
    public double HoldS { get; init; } = 2;

    /// <summary>Dip of force below weight before the push, % of weight; zero for a clean one.</summary>
    public double DipPct { get; init; }
}
