namespace Jumpwright.Simulation.Tasks;

/// <summary>A drop jump, or a landing from a drop.</summary>
public sealed record DropJumpSettings : JumperSettings
{
    public DropJumpSettings() { }

    /// <summary>The same jumper.</summary>
    public DropJumpSettings(JumperSettings jumper)
        : base(jumper) { }

    /// <summary>The box's height, m: what a label would say.</summary>
    public double BoxHeightM { get; init; } = 0.3;

    /// <summary>The true drop height: square of the touch-down velocity over 2 g, m.</summary>
    public double DropHeightM { get; init; } = 0.27;

    public double ContactS { get; init; } = 0.2;

    public double TakeOffVelocityMS { get; init; } = 2.4;

    /// <summary>Centre of mass at the first touch-down, above quiet standing, m.</summary>
    public double RiseAtTouchDownM { get; init; } = 0.08;

    public bool Bimodal { get; init; }
}
