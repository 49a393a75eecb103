using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Motions;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Trials;

namespace Jumpwright.Simulation.Devices;

/// <summary>Reads every measure of the contract off the motion itself.</summary>
public static class Truths
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>No landing takes longer from touch-down to its lowest point, s.</summary>
    private const double LongestFallS = 0.6;

    /// <summary>The truth of a recording of that motion.</summary>
    /// <param name="motion">The motion.</param>
    /// <param name="settings">The device; its cut takes away what was not recorded.</param>
    /// <param name="firstSampleS">Motion time at which the recording's clock starts, s.</param>
    public static Truth Of(SimulatedMotion motion, PlateSettings settings, double firstSampleS)
    {
        Motion m = motion.Motion;
        double end = settings.CutToS ?? m.ToS;
        SortedDictionary<string, double> found = new(StringComparer.Ordinal)
        {
            [MeasureNames.SystemWeight] = motion.Motion.WeightN,
            [MeasureNames.BodyWeight] = motion.BodyMassKg * G,
        };
        ImmutableArray<HopContact> hops = [];
        double? landing = motion.LandingS is { } l && l < end ? l : null;
        TrialEvents events = new(OnsetS: motion.OnsetS, TouchDownS: landing);
        if (motion.Contacts.Length > 0 && motion.Task != JumpTask.RepeatedHops)
        {
            events = OfJump(motion, settings, motion.Contacts[0], landing, found, events);
        }
        else if (motion.Task == JumpTask.RepeatedHops)
        {
            hops = OfHops(motion, end, found);
        }

        if (landing is { } touch)
        {
            found[MeasureNames.PeakLandingForce] = m.PeakForce(touch, end).Value;
            found[MeasureNames.LandingNetImpulse] = -motion.Motion.SystemMassKg * m.At(touch).VelocityMS;
            if (settings.TwoPlates && motion.Task != JumpTask.SnapDown)
            {
                found[MeasureNames.AsymmetryLandingImpulse] = Asymmetry(
                    motion,
                    settings,
                    touch,
                    m.Lowest(touch, Math.Min(touch + LongestFallS, end)).TimeS
                );
            }

            if (TimeToStabilisation(m, touch, end) is { } settled)
            {
                found[MeasureNames.TimeToStabilisation] = settled;
                events = events with { StableS = touch + settled };
            }
        }

        return new Truth(Shift(events, firstSampleS), found.ToImmutableSortedDictionary(StringComparer.Ordinal), hops);
    }

    private static TrialEvents OfJump(
        SimulatedMotion motion,
        PlateSettings settings,
        ContactSpan contact,
        double? landing,
        SortedDictionary<string, double> found,
        TrialEvents events
    )
    {
        Motion m = motion.Motion;
        bool fromAir = motion.OnsetS is null;
        double takeOff = contact.ToS;
        double velocity = m.At(takeOff).VelocityMS;
        double height = velocity * velocity / (2 * G);
        double bottom = motion.PropulsionFromS ?? m.Lowest(contact.FromS, takeOff).TimeS;
        found[MeasureNames.TakeOffVelocity] = velocity;
        found[MeasureNames.JumpHeight] = height;
        found[MeasureNames.PropulsionDuration] = takeOff - bottom;
        found[MeasureNames.PeakPropulsivePower] = m.PeakPower(bottom, takeOff).Value;
        found[MeasureNames.MeanPropulsivePower] =
            m.Integral(bottom, takeOff, t => m.ForceAt(t) * m.At(t).VelocityMS) / (takeOff - bottom);
        found[MeasureNames.PeakForce] = m.PeakForce(contact.FromS, takeOff).Value;
        if (settings.TwoPlates)
        {
            found[MeasureNames.AsymmetryPropulsiveImpulse] = Asymmetry(motion, settings, bottom, takeOff);
        }

        events = events with { BottomS = bottom, TakeOffS = takeOff };
        if (fromAir)
        {
            double contactTime = takeOff - contact.FromS;
            double impact = m.At(contact.FromS).VelocityMS;
            found[MeasureNames.ContactTime] = contactTime;
            if (motion.Task == JumpTask.DropJump)
            {
                found[MeasureNames.DropHeight] = impact * impact / (2 * G);
            }

            found[MeasureNames.ReactiveStrengthIndex] = height / contactTime;
            found[MeasureNames.BrakingDuration] = bottom - contact.FromS;
            Braking(contact.FromS);
            double fall = m.At(contact.FromS).DisplacementM - m.At(bottom).DisplacementM;
            found[MeasureNames.VerticalStiffness] = found[MeasureNames.PeakForce] / fall;
            events = events with { FirstTouchDownS = contact.FromS };
        }
        else
        {
            found[MeasureNames.TimeToTakeOff] = takeOff - contact.FromS;
            found[MeasureNames.ReactiveStrengthIndexModified] = height / (takeOff - contact.FromS);
            if (motion.Task == JumpTask.SquatJump)
            {
                found[MeasureNames.UnwantedDip] = motion.UnwantedDipPct ?? 0;
            }
            else
            {
                double fastest = m.FastestFall(contact.FromS, bottom).TimeS;
                found[MeasureNames.CountermovementDepth] = -m.At(bottom).DisplacementM;
                found[MeasureNames.BrakingDuration] = bottom - fastest;
                Braking(fastest);
                events = events with { PeakDownwardVelocityS = fastest };
            }
        }

        if (landing is { } touch && !motion.LandsElsewhere)
        {
            double flight = touch - takeOff;
            found[MeasureNames.FlightTime] = flight;
            found[MeasureNames.JumpHeightFlightTime] = G * flight * flight / 8;
            if (fromAir)
            {
                found[MeasureNames.VerticalStiffnessTimeModel] = TimeModelStiffness(
                    motion.Motion.SystemMassKg,
                    takeOff - contact.FromS,
                    flight
                );
            }
        }

        return events;

        void Braking(double fromS)
        {
            if (settings.TwoPlates)
            {
                found[MeasureNames.AsymmetryBrakingImpulse] = Asymmetry(motion, settings, fromS, bottom);
            }
        }
    }

    private static ImmutableArray<HopContact> OfHops(
        SimulatedMotion motion,
        double end,
        SortedDictionary<string, double> found
    )
    {
        Motion m = motion.Motion;
        ImmutableArray<HopContact>.Builder hops = ImmutableArray.CreateBuilder<HopContact>();
        List<(HopContact Hop, double Peak, double Fall)> all = [];
        for (int i = 0; i < motion.Contacts.Length; i++)
        {
            ContactSpan contact = motion.Contacts[i];
            double next = i + 1 < motion.Contacts.Length ? motion.Contacts[i + 1].FromS : motion.LandingS ?? double.NaN;
            if (!(next < end))
            {
                break;
            }

            double flight = next - contact.ToS;
            double time = contact.ToS - contact.FromS;
            HopContact hop = new(time, flight, G * flight * flight / 8 / time);
            hops.Add(hop);
            all.Add(
                (
                    hop,
                    m.PeakForce(contact.FromS, contact.ToS).Value,
                    m.At(contact.FromS).DisplacementM - m.Lowest(contact.FromS, contact.ToS).Value
                )
            );
        }

        found[MeasureNames.HopsFound] = hops.Count;
        List<(HopContact Hop, double Peak, double Fall)> best =
        [
            .. all.Skip(1)
                .Where(h => h.Hop.ContactS < 0.25)
                .OrderByDescending(h => h.Hop.ReactiveStrengthIndex)
                .Take(5),
        ];
        found[MeasureNames.HopsCounted] = best.Count;
        if (best.Count > 0)
        {
            found[MeasureNames.ContactTime] = best.Average(h => h.Hop.ContactS);
            found[MeasureNames.FlightTime] = best.Average(h => h.Hop.FlightS);
            found[MeasureNames.JumpHeightFlightTime] = best.Average(h => G * h.Hop.FlightS * h.Hop.FlightS / 8);
            found[MeasureNames.ReactiveStrengthIndex] = best.Average(h => h.Hop.ReactiveStrengthIndex);
            found[MeasureNames.PeakForce] = best.Max(h => h.Peak);
            found[MeasureNames.VerticalStiffness] = best.Average(h => h.Peak / h.Fall);
            found[MeasureNames.VerticalStiffnessTimeModel] = best.Average(h =>
                TimeModelStiffness(m.SystemMassKg, h.Hop.ContactS, h.Hop.FlightS)
            );
        }

        return hops.ToImmutable();
    }

    /// <summary>Half-sine model (Dalleau et al. 2004; the same as Morin et al. 2005), N/m.</summary>
    public static double TimeModelStiffness(double massKg, double contactS, double flightS)
    {
        double cycle = flightS + contactS;
        return massKg * Math.PI * cycle / (contactS * contactS * ((cycle / Math.PI) - (contactS / 4)));
    }

    private static double Asymmetry(SimulatedMotion motion, PlateSettings settings, double from, double to)
    {
        Shares shares = new(motion, settings);
        double left = motion.Motion.Integral(from, to, t => motion.Motion.ForceAt(t) * shares.LeftAt(t));
        double total = motion.Motion.Integral(from, to, motion.Motion.ForceAt);
        return 100 * ((2 * left) - total) / total;
    }

    private static double? TimeToStabilisation(Motion m, double touch, double end)
    {
        const double step = 0.0005;
        double weight = m.WeightN;
        bool Outside(double t) => Math.Abs(m.ForceAt(t) - weight) > 0.05 * weight;
        int last = -1;
        int count = (int)((end - touch) / step);
        for (int i = count; i >= 0; i--)
        {
            if (Outside(touch + (i * step)))
            {
                last = i;
                break;
            }
        }

        if (last < 0 || last == count)
        {
            return null;
        }

        double outside = touch + (last * step);
        double inside = touch + ((last + 1) * step);
        for (int i = 0; i < 50; i++)
        {
            double middle = (outside + inside) / 2;
            (outside, inside) = Outside(middle) ? (middle, inside) : (outside, middle);
        }

        return end - inside >= 1 ? inside - touch : null;
    }

    private static TrialEvents Shift(TrialEvents e, double by) =>
        new(
            e.OnsetS - by,
            e.PeakDownwardVelocityS - by,
            e.BottomS - by,
            e.TakeOffS - by,
            e.TouchDownS - by,
            e.FirstTouchDownS - by,
            e.StableS - by
        );
}
