using System.Collections.Immutable;
using Jumpwright.Recordings;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A countermovement jump whose force is made of sines, so that its velocity is known in closed form: standing; unweighting
/// (half a sine below the weight); braking and propulsion (a sine above it, on into its falling half until the force is zero);
/// flight; a landing that ends at rest; standing. Small and independent of the simulator.
/// </summary>
internal sealed record PlainJump
{
    private const double G = 9.81;

    public double MassKg { get; init; } = 70;
    public double RateHz { get; init; } = 1000;

    /// <summary>Depth of the unweighting, part of the weight.</summary>
    public double DipPart { get; init; } = 0.7;

    public double DipS { get; init; } = 0.40;

    /// <summary>Net force at the top of the push, part of the weight.</summary>
    public double PushPart { get; init; } = 1.35;

    public double PushS { get; init; } = 0.52;
    public double LandingS { get; init; } = 0.45;
    public double StandS { get; init; } = 2.0;
    public double StandAfterS { get; init; } = 2.5;
    public double StartS { get; init; }

    /// <summary>Centre of mass lower at touch-down than at take-off, m.</summary>
    public double LowerM { get; init; }

    public double OffsetN { get; init; }
    public double NoiseN { get; init; }
    public int Seed { get; init; } = 1;

    /// <summary>Left part of the force; null for one plate.</summary>
    public double? LeftShare { get; init; }

    public double ScaleN { get; init; } = 1;
    public RecordingLabels Labels { get; init; } = new(Task: JumpTask.CountermovementJump);

    public double WeightN => MassKg * G;

    /// <summary>Instants since the first sample, s.</summary>
    public double OnsetS => StandS;

    /// <summary>From the start of the push's sine to the instant of zero force, s.</summary>
    private double PushToZeroS => PushS / Math.PI * (Math.PI + Math.Asin(1 / PushPart));

    public double TakeOffS => OnsetS + DipS + PushToZeroS;

    public double TakeOffVelocityMS =>
        (-G * DipPart * 2 * DipS / Math.PI)
        + (G * PushPart * PushS / Math.PI * (1 - Math.Cos(Math.PI * PushToZeroS / PushS)));

    /// <summary>How high the centre of mass is at take-off above standing, m: people leave on their toes, some 0.1 m higher.</summary>
    public double RiseM
    {
        get
        {
            double fallen = -G * DipPart * DipS * DipS / Math.PI;
            double falling = -G * DipPart * 2 * DipS / Math.PI;
            double turn = PushS / Math.PI;
            return fallen
                + (falling * PushToZeroS)
                + (G * PushPart * turn * (PushToZeroS - (turn * Math.Sin(PushToZeroS / turn))));
        }
    }

    public double HeightM => TakeOffVelocityMS * TakeOffVelocityMS / (2 * G);

    public double FlightS =>
        (TakeOffVelocityMS + Math.Sqrt((TakeOffVelocityMS * TakeOffVelocityMS) + (2 * G * LowerM))) / G;

    public double TouchDownS => TakeOffS + FlightS;

    /// <summary>Force at an instant since the first sample, N.</summary>
    public double ForceN(double t)
    {
        double w = WeightN;
        if (t < OnsetS)
        {
            return w;
        }

        if (t < OnsetS + DipS)
        {
            return w * (1 - (DipPart * Math.Sin(Math.PI * (t - OnsetS) / DipS)));
        }

        if (t < TakeOffS)
        {
            return Math.Max(w * (1 + (PushPart * Math.Sin(Math.PI * (t - OnsetS - DipS) / PushS))), 0);
        }

        if (t < TouchDownS)
        {
            return 0;
        }

        double since = t - TouchDownS;
        if (since >= LandingS)
        {
            return w;
        }

        // From 0 to the weight along a cosine, plus the half-sine that stops the fall.
        double falling = (G * FlightS) - TakeOffVelocityMS;
        double stop = ((MassKg * falling) + (w * LandingS / 2)) * Math.PI / (2 * LandingS);
        double along = Math.PI * since / LandingS;
        return (w * (1 - Math.Cos(along)) / 2) + (stop * Math.Sin(along));
    }

    public ForceRecording Record()
    {
        double end = TouchDownS + LandingS + StandAfterS;
        int count = (int)(end * RateHz);
        var random = new Random(Seed);
        var total = new double[count];
        double[] left = LeftShare is null ? [] : new double[count];
        double[] right = LeftShare is null ? [] : new double[count];
        for (int i = 0; i < count; i++)
        {
            double force = ForceN(i / RateHz) * ScaleN;
            if (LeftShare is { } share)
            {
                left[i] = (force * share) + OffsetN + (NoiseN / Math.Sqrt(2) * Normal(random));
                right[i] = (force * (1 - share)) - (OffsetN / 2) + (NoiseN / Math.Sqrt(2) * Normal(random));
                total[i] = left[i] + right[i];
            }
            else
            {
                total[i] = force + OffsetN + (NoiseN * Normal(random));
            }
        }

        return new ForceRecording(Labels, ImmutableArray<string>.Empty, StartS, RateHz, total, left, right);
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
