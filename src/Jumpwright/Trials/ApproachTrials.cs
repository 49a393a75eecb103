using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>
/// Approach jumps: the plate is empty, takes one hard plant, and is left again; the landing may be on it or beside it. The
/// vertical velocity at the plant is not zero, so height by impulse needs standing still after a landing on the plate.
/// </summary>
internal static class ApproachTrials
{
    private const double LongestPlantS = 1.0;

    public static Outcome<ImmutableArray<Trial>> Of(Plate plate)
    {
        var trials = ImmutableArray.CreateBuilder<Trial>();
        bool planted = false;
        foreach ((int first, int last) in plate.Stays)
        {
            Contact plant = plate.Contacts[first];
            if (
                plant is not { TouchDown: { } touchDown, TakeOff: { } takeOff }
                || plate.Seconds(touchDown.Sample, takeOff.Sample) > LongestPlantS
            )
            {
                continue;
            }

            planted = true;
            List<QuietStanding> still = plate.Still(first, last);
            using FittedMotion? elsewhere = still.Count == 0 ? WeighedElsewhere(plate, first) : null;
            if (last == first && still.Count == 0 && elsewhere is null)
            {
                continue;
            }

            using FittedMotion? motion =
                still.Count > 0 ? plate.FitMotion(first, last, still, samePosture: true) : null;
            Contact? landing = last > first ? plate.Contacts[first + 1] : null;
            Trial trial = Measure(plate, motion, elsewhere, plant, landing, trials.Count + 1);
            int bounces = last - first - 1;
            trials.Add(
                bounces > 0 ? trial with { Warnings = trial.Warnings.Add(Cautions.BouncesIgnored(bounces)) } : trial
            );
        }

        return trials.Count > 0 ? trials.ToImmutable()
            : planted ? Refusals.ApproachOffPlate()
            : Refusals.NoPlant();
    }

    /// <summary>The longest standing of another stay: somebody is weighed, steps off and runs up. Null where nobody stands.</summary>
    private static FittedMotion? WeighedElsewhere(Plate plate, int planted)
    {
        FittedMotion? best = null;
        foreach ((int first, int last) in plate.Stays)
        {
            List<QuietStanding> still = first == planted ? [] : plate.Still(first, last);
            if (still.Count == 0)
            {
                continue;
            }

            FittedMotion motion = plate.FitMotion(first, last, still, samePosture: true);
            if (best is null || motion.LongestStillS > best.LongestStillS)
            {
                best?.Dispose();
                best = motion;
            }
            else
            {
                motion.Dispose();
            }
        }

        return best;
    }

    /// <summary>Measures one plant.</summary>
    /// <param name="plate">The recording.</param>
    /// <param name="motion">The motion through the plant; null where the stay holds no standing.</param>
    /// <param name="elsewhere">The standing of another stay, for the weight alone: the velocity at the plant is unknown then.</param>
    /// <param name="plant">The plant.</param>
    /// <param name="landing">The landing on the plate; null where there is none.</param>
    /// <param name="number">Number of the trial.</param>
    private static Trial Measure(
        Plate plate,
        FittedMotion? motion,
        FittedMotion? elsewhere,
        Contact plant,
        Contact? landing,
        int number
    )
    {
        var list = new MeasureList();
        Instant touchDown = plant.TouchDown!.Value;
        Instant takeOff = plant.TakeOff!.Value;
        (double contactS, double contactU) = PushMeasures.ContactTime(list, plate, touchDown, takeOff);
        var events = new TrialEvents(
            FirstTouchDownS: plate.TimeS(touchDown.Sample),
            TakeOffS: plate.TimeS(takeOff.Sample)
        );
        if (motion is not null)
        {
            Weights.Add(list, plate, motion);
            PushMeasures.TakeOff(list, motion, takeOff);
            ImpossibleStart.Check(list, motion, plant);
        }
        else if (elsewhere is not null)
        {
            Weights.Add(list, plate, elsewhere);
            list.Warn(Cautions.WeighedElsewhere);
        }
        else
        {
            list.Warn(Cautions.NeverStill);
        }

        if (landing?.TouchDown is { } landed)
        {
            PushMeasures.FlightTime(list, plate, takeOff, landed);
            double? stable = Landing.Measure(list, plate, landed, landing.Samples.To, motion);
            events = events with
            {
                TouchDownS = plate.TimeS(landed.Sample),
                StableS = stable is { } s ? plate.TimeS(s) : null,
            };
            if (motion is not null)
            {
                Agreement.Check(list, plate, motion, takeOff, landed);
            }
        }
        else
        {
            list.Warn(Cautions.LeavesPlate);
        }

        if ((list.Find(MeasureNames.JumpHeight) ?? list.Find(MeasureNames.JumpHeightFlightTime)) is { } height)
        {
            ReboundIndex.Add(list, height, contactS, contactU, takeOff.UncertaintyS);
        }

        if (motion is not null && Rebound.Of(plate, motion, plant) is { } rebound)
        {
            events = events with { BottomS = plate.TimeS(rebound.Bottom.Sample) };
            list.Add(
                MeasureNames.PropulsionDuration,
                plate.Seconds(rebound.Bottom.Sample, takeOff.Sample),
                Unit.Second,
                PushMeasures.Quadrature(rebound.Bottom.UncertaintyS, takeOff.UncertaintyS),
                "lowest point to take-off"
            );
            list.Add(
                MeasureNames.BrakingDuration,
                plate.Seconds(touchDown.Sample, rebound.Bottom.Sample),
                Unit.Second,
                PushMeasures.Quadrature(rebound.Bottom.UncertaintyS, touchDown.UncertaintyS),
                "touch-down to lowest point"
            );
            PushMeasures.Power(list, plate, motion, rebound.Bottom, takeOff);
            double lowest = rebound.Bottom.Sample;
            PushMeasures.AsymmetryOf(list, plate, MeasureNames.AsymmetryBrakingImpulse, touchDown.Sample, lowest);
            PushMeasures.AsymmetryOf(list, plate, MeasureNames.AsymmetryPropulsiveImpulse, lowest, takeOff.Sample);
        }

        Leading.CheckPush(list, plate, touchDown);
        PushMeasures.PeakForce(list, plate, MeasureNames.PeakForce, (int)touchDown.Sample, (int)takeOff.Sample + 1);
        return new Trial(number, JumpTask.ApproachJump, events, list.Measures, [], list.Warnings, list.Doubtful);
    }
}
