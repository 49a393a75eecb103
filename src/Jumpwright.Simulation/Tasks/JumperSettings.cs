namespace Jumpwright.Simulation.Tasks;

/// <summary>What all simulated efforts share.</summary>
public record JumperSettings
{
    /// <summary>The athlete alone, kg.</summary>
    public double BodyMassKg { get; init; } = 75;

    /// <summary>Held or worn, kg.</summary>
    public double ExternalLoadKg { get; init; }

    /// <summary>Quiet standing before the movement, s.</summary>
    public double StandBeforeS { get; init; } = 2;

    /// <summary>Quiet standing after the landing has settled, s.</summary>
    public double StandAfterS { get; init; } = 2;

    /// <summary>Height of the centre of mass at take-off above quiet standing (toes pointed), m.</summary>
    public double RiseAtTakeOffM { get; init; } = 0.11;

    /// <summary>How much lower the centre of mass is at touch-down than at take-off (bent landing), m.</summary>
    public double LandingPostureDropM { get; init; }

    /// <summary>How far below quiet standing the landing goes, m.</summary>
    public double LandingDepthM { get; init; } = 0.2;

    /// <summary>Root mean square of the sway's force, N: a real motion, which the movement starts from.</summary>
    public double SwayN { get; init; }

    /// <summary>Power of the sway's force falls as frequency to the minus this.</summary>
    public double SwayColour { get; init; } = 1;

    public double SystemMassKg => BodyMassKg + ExternalLoadKg;
}
