namespace Jumpwright.Simulation.Devices;

/// <summary>The force plates and what they add to the truth.</summary>
public sealed record PlateSettings
{
    public double RateHz { get; init; } = 1000;

    public bool TwoPlates { get; init; } = true;

    /// <summary>Standard deviation of white noise in the total force, N; two plates share its variance.</summary>
    public double NoiseN { get; init; } = 1;

    /// <summary>Root mean square of a slow disturbance (0.3–3 Hz) added to the force in contact only, N; not a motion.</summary>
    public double DisturbanceN { get; init; }

    /// <summary>Amplitude of mains hum, N.</summary>
    public double HumN { get; init; }

    public double HumHz { get; init; } = 50;

    /// <summary>Drift of the zero from the first to the last sample, N.</summary>
    public double DriftN { get; init; }

    /// <summary>Zero offset of the only or the left plate, N.</summary>
    public double OffsetN { get; init; }

    /// <summary>Zero offset of the right plate, N.</summary>
    public double RightOffsetN { get; init; }

    /// <summary>Amplitude of the plate's ringing after take-off and touch-down, N.</summary>
    public double RingingN { get; init; }

    public double RingingHz { get; init; } = 60;

    /// <summary>Time in which ringing falls to 1/e, s.</summary>
    public double RingingDecayS { get; init; } = 0.04;

    /// <summary>Steps in which force is written, N; zero for none but the decimals'.</summary>
    public double QuantumN { get; init; }

    public int ForceDecimals { get; init; } = 2;

    /// <summary>Asymmetry of the propulsive impulse, (L − R)/(L + R), %.</summary>
    public double AsymmetryPct { get; init; }

    /// <summary>Left part of the weight in standing.</summary>
    public double StandingLeftShare { get; init; } = 0.5;

    /// <summary>Left part of the force in landing.</summary>
    public double LandingLeftShare { get; init; } = 0.5;

    /// <summary>How long one foot is on the plate alone after each touch-down, s.</summary>
    public double LeadS { get; init; }

    public bool LeftLeads { get; init; } = true;

    /// <summary>Recorded from that instant of the motion, s.</summary>
    public double CutFromS { get; init; }

    /// <summary>Recorded up to that instant, s; null to the end.</summary>
    public double? CutToS { get; init; }

    /// <summary>Empty plate and stepping on before the motion begins, s; zero for none.</summary>
    public double StepOnS { get; init; }

    /// <summary>Adds the step-off at the end: the plate empty again for that long, s.</summary>
    public double StepOffS { get; init; }
}
