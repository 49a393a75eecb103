using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Measures of a push from standing: height by impulse, times, depth, power, force, asymmetry.</summary>
internal static class PushMeasures
{
    private const double G = Gravity.MetresPerSecondSquared;
    public const string ByImpulse = "impulse-momentum";
    public const string ByFlightTime = "flight-time";

    /// <summary>Height and velocity of take-off.</summary>
    public static void TakeOff(MeasureList into, FittedMotion motion, Instant takeOff)
    {
        double v = motion.VelocityAt(takeOff.Sample);
        double u = TakeOffVelocityUncertainty(motion, takeOff);
        into.Add(MeasureNames.JumpHeight, Flight.HeightFromVelocityM(v), Unit.Metre, Math.Abs(v) / G * u, ByImpulse);
        into.Add(MeasureNames.TakeOffVelocity, v, Unit.MetrePerSecond, u, ByImpulse);
        Sureness.OfHeight(into, MeasureNames.JumpHeight, motion, takeOff);
        if (takeOff.Unsettled)
        {
            into.Doubt(
                Cautions.Ringing,
                MeasureNames.JumpHeight,
                MeasureNames.TakeOffVelocity,
                MeasureNames.ReactiveStrengthIndex,
                MeasureNames.ReactiveStrengthIndexModified,
                MeasureNames.PropulsionDuration,
                MeasureNames.MeanPropulsivePower
            );
        }
    }

    /// <summary>A take-off seen too late is a velocity seen too low by g times that.</summary>
    public static double TakeOffVelocityUncertainty(FittedMotion motion, Instant takeOff) =>
        motion.VelocityBelievedAt(takeOff.Sample).StandardUncertainty(BesidesMS(motion, takeOff));

    /// <summary>Time on the plate from one touch-down to the take-off after it, s, with its doubt.</summary>
    public static (double Seconds, double UncertaintyS) ContactTime(
        MeasureList into,
        Plate plate,
        Instant touchDown,
        Instant takeOff
    )
    {
        double seconds = plate.Seconds(touchDown.Sample, takeOff.Sample);
        double u = Quadrature(touchDown.UncertaintyS, takeOff.UncertaintyS);
        into.Add(MeasureNames.ContactTime, seconds, Unit.Second, u, "force-threshold");
        Sureness.OfContact(into);
        if (touchDown.Unsettled || takeOff.Unsettled)
        {
            into.Doubt(Cautions.Ringing, MeasureNames.ContactTime, MeasureNames.ReactiveStrengthIndex);
        }

        return (seconds, u);
    }

    /// <summary>How likely a velocity at an instant is off by more than so much, m/s.</summary>
    public static double VelocityBeyond(FittedMotion motion, Instant instant, double offMS) =>
        motion.VelocityBelievedAt(instant.Sample).Beyond(offMS, BesidesMS(motion, instant));

    private static double BesidesMS(FittedMotion motion, Instant instant) =>
        Quadrature(motion.EdgeMS, G * instant.UncertaintyS);

    public static void FlightTime(MeasureList into, Plate plate, Instant takeOff, Instant touchDown, bool height = true)
    {
        double t = plate.Seconds(takeOff.Sample, touchDown.Sample);
        double u = Math.Sqrt(
            (takeOff.UncertaintyS * takeOff.UncertaintyS) + (touchDown.UncertaintyS * touchDown.UncertaintyS)
        );
        into.Add(MeasureNames.FlightTime, t, Unit.Second, u, "force-threshold");
        if (takeOff.Unsettled || touchDown.Unsettled)
        {
            into.Doubt(
                Cautions.Ringing,
                MeasureNames.FlightTime,
                MeasureNames.JumpHeightFlightTime,
                MeasureNames.ReactiveStrengthIndex,
                MeasureNames.VerticalStiffnessTimeModel
            );
        }

        TouchedPlate.InFlight(into, plate, takeOff, touchDown);
        if (height)
        {
            into.Add(
                MeasureNames.JumpHeightFlightTime,
                Flight.HeightFromTimeM(t),
                Unit.Metre,
                G * t / 4 * u,
                ByFlightTime
            );
        }
    }

    /// <summary>Times and depth of the phases, power over propulsion, peak force and asymmetry.</summary>
    public static void Phases(MeasureList into, Plate plate, FittedMotion motion, Push push, bool countermovement)
    {
        double takeOff = push.TakeOff.Sample;
        if (push.Onset is { } onset)
        {
            double time = plate.Seconds(onset.Sample, takeOff);
            double u = Math.Sqrt(
                (onset.UncertaintyS * onset.UncertaintyS) + (push.TakeOff.UncertaintyS * push.TakeOff.UncertaintyS)
            );
            into.Add(MeasureNames.TimeToTakeOff, time, Unit.Second, u, "onset-5sd-30ms");
            if (into.Find(MeasureNames.JumpHeight) is { } height)
            {
                double index = ReactiveStrength.ModifiedIndex(height.Value, time);
                double relative = Math.Sqrt(
                    Math.Pow(height.StandardUncertainty / Math.Max(height.Value, 1e-6), 2) + Math.Pow(u / time, 2)
                );
                into.Add(
                    MeasureNames.ReactiveStrengthIndexModified,
                    index,
                    Unit.MetrePerSecond,
                    index * relative,
                    "impulse-momentum over time to take-off"
                );
            }
        }

        if (countermovement && push.PeakDown is { } down)
        {
            into.Add(
                MeasureNames.CountermovementDepth,
                -motion.PositionAt(push.Bottom.Sample),
                Unit.Metre,
                motion.PositionUncertaintyAt(push.Bottom.Sample),
                "double integration from quiet standing"
            );
            into.Add(
                MeasureNames.BrakingDuration,
                plate.Seconds(down.Sample, push.Bottom.Sample),
                Unit.Second,
                Quadrature(down.UncertaintyS, push.Bottom.UncertaintyS),
                "peak downward velocity to lowest point"
            );
            AsymmetryOf(into, plate, MeasureNames.AsymmetryBrakingImpulse, down.Sample, push.Bottom.Sample);
        }

        into.Add(
            MeasureNames.PropulsionDuration,
            plate.Seconds(push.Bottom.Sample, takeOff),
            Unit.Second,
            Quadrature(push.Bottom.UncertaintyS, push.TakeOff.UncertaintyS),
            "lowest point to take-off"
        );
        Power(into, plate, motion, push.Bottom, push.TakeOff);
        double from = push.Onset?.Sample ?? push.PeakDown?.Sample ?? push.Bottom.Sample;
        PeakForce(into, plate, MeasureNames.PeakForce, (int)Math.Ceiling(from), (int)takeOff + 1);
        AsymmetryOf(into, plate, MeasureNames.AsymmetryPropulsiveImpulse, push.Bottom.Sample, takeOff);
    }

    /// <summary>Total force times velocity of the centre of mass, over propulsion.</summary>
    public static void Power(MeasureList into, Plate plate, FittedMotion motion, Instant bottom, Instant takeOff)
    {
        int from = (int)Math.Ceiling(bottom.Sample);
        int to = Math.Min((int)takeOff.Sample, motion.Samples.To - 1);
        if (to - from < 2)
        {
            return;
        }

        ReadOnlySpan<double> v = motion.VelocityMS[(from - motion.Samples.From)..];
        ReadOnlySpan<double> f = motion.ForceN[(from - motion.Samples.From)..];
        double peak = 0;
        int at = 0;
        for (int i = 0; i <= to - from; i++)
        {
            double p = f[i] * v[i];
            if (p > peak)
            {
                (peak, at) = (p, i);
            }
        }

        // Noise lifts a largest sample: a parabola through the neighbourhood gives the top of the curve instead.
        double top = Smoothed(f, v, at, to - from, plate.RateHz, out double points);
        double uv = motion.VelocityUncertaintyAt(from + at);
        double uPeak = Quadrature(
            f[at] * uv,
            1.5 * v[at] * plate.Levels.NoiseN / Math.Sqrt(points),
            v[at] * PushMeasures.Quadrature(plate.Empty.ZeroUncertaintyN, motion.DisturbanceN)
        );
        into.Add(MeasureNames.PeakPropulsivePower, top, Unit.Watt, uPeak, "force times velocity");

        // Work over the phase is the gain of kinetic and potential energy: exact, and free of the noise of single samples.
        double seconds = plate.Seconds(bottom.Sample, takeOff.Sample);
        double takeOffV = motion.VelocityAt(takeOff.Sample);
        double rise = motion.PositionAt(takeOff.Sample) - motion.PositionAt(bottom.Sample);
        double work = (motion.MassKg * takeOffV * takeOffV / 2) + (motion.WeightN * rise);
        double mean = work / seconds;
        double uWork = motion.MassKg * takeOffV * motion.VelocityUncertaintyAt(takeOff.Sample) * 1.2;
        double uMean = Quadrature(
            uWork / seconds,
            mean * Quadrature(bottom.UncertaintyS, takeOff.UncertaintyS) / seconds
        );
        into.Add(MeasureNames.MeanPropulsivePower, mean, Unit.Watt, uMean, "work over time");
    }

    /// <summary>The greatest sample, N.</summary>
    public static void PeakForce(MeasureList into, Plate plate, string name, int from, int to)
    {
        from = Math.Max(from, 0);
        to = Math.Min(to, plate.ForceN.Length);
        if (to - from < 1)
        {
            return;
        }

        double peak = Samples.Greatest(plate.ForceN.Slice(from, to - from));
        double u = Quadrature(1.5 * plate.Levels.NoiseN, plate.Empty.ZeroUncertaintyN, 0.002 * peak);
        into.Add(name, peak, Unit.Newton, u, "largest sample");
    }

    /// <summary>(L − R) / (L + R) · 100 of the gross impulses between two instants.</summary>
    public static void AsymmetryOf(MeasureList into, Plate plate, string name, double fromSample, double toSample)
    {
        if (!plate.Recording.HasTwoPlates)
        {
            return;
        }

        int from = Math.Max((int)Math.Ceiling(fromSample), 0);
        int to = Math.Min((int)toSample + 1, plate.ForceN.Length);
        if (to - from < 2)
        {
            return;
        }

        (double left, double leftU) = OneSide(plate, plate.Recording.LeftN.Span, plate.LeftEmpty, from, to);
        (double right, double rightU) = OneSide(plate, plate.Recording.RightN.Span, plate.RightEmpty, from, to);
        double both = left + right;
        if (both <= 0)
        {
            return;
        }

        double u = 200 / (both * both) * Quadrature(right * leftU, left * rightU);
        into.Add(
            name,
            Asymmetry.OverSumPct(left, right),
            Unit.Percent,
            Quadrature(u, 0.05),
            "gross impulse, over the sum"
        );
    }

    private static (double Impulse, double Uncertainty) OneSide(
        Plate plate,
        ReadOnlySpan<double> sideN,
        EmptyPlate own,
        int from,
        int to
    )
    {
        double seconds = (to - from - 1) / plate.RateHz;
        double impulse = Impulse.OfNs(sideN[from..to], plate.RateHz) - (own.ZeroN * seconds);
        double u = Quadrature(own.ZeroUncertaintyN * seconds, plate.Levels.NoiseN * Math.Sqrt(seconds / plate.RateHz));
        return (impulse, u);
    }

    private static double Smoothed(
        ReadOnlySpan<double> f,
        ReadOnlySpan<double> v,
        int at,
        int last,
        double rateHz,
        out double points
    )
    {
        int half = Math.Min(Math.Min(at, last - at), (int)(0.012 * rateHz));
        points = 1;
        if (half < 2)
        {
            return f[at] * v[at];
        }

        // Least-squares parabola on an even grid, evaluated at its top.
        double n = 0;
        double s2 = 0;
        double s4 = 0;
        double y0 = 0;
        double y1 = 0;
        double y2 = 0;
        for (int k = -half; k <= half; k++)
        {
            double p = f[at + k] * v[at + k];
            double kk = (double)k * k;
            n++;
            s2 += kk;
            s4 += kk * kk;
            y0 += p;
            y1 += k * p;
            y2 += kk * p;
        }

        double det = (n * s4) - (s2 * s2);
        double c = ((n * y2) - (s2 * y0)) / det;
        double b = y1 / s2;
        double a = ((s4 * y0) - (s2 * y2)) / det;
        points = n / 2.25;
        return c < 0 && Math.Abs(b / (2 * c)) <= half ? a - (b * b / (4 * c)) : f[at] * v[at];
    }

    public static double Quadrature(double a, double b) => Math.Sqrt((a * a) + (b * b));

    public static double Quadrature(double a, double b, double c) => Math.Sqrt((a * a) + (b * b) + (c * c));
}
