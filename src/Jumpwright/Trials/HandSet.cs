using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>The events of one trial that a person set, in the plate's samples.</summary>
internal sealed class HandSet
{
    /// <summary>Standard uncertainty of an event set by eye on a zoomed curve, s (house rule: two samples at 500 Hz).</summary>
    public const double ByEyeS = 0.004;

    /// <summary>An event further than this from every event of its trial belongs to another jump, s (house rule).</summary>
    private const double FarS = 1;

    private readonly Dictionary<TrialEvent, Instant> _at;

    private HandSet(Dictionary<TrialEvent, Instant> at) => _at = at;

    /// <summary>The last word counts where an event was set twice.</summary>
    public static HandSet For(int trial, ImmutableArray<EventCorrection> corrections, Plate plate)
    {
        var at = new Dictionary<TrialEvent, Instant>();
        foreach (EventCorrection correction in corrections.Where(c => c.Trial == trial))
        {
            at[correction.Event] = new Instant(plate.SampleAt(correction.TimeS), ByEyeS);
        }

        return new HandSet(at);
    }

    public Instant? Or(TrialEvent which, Instant? found) => _at.TryGetValue(which, out Instant set) ? set : found;

    public Contact Of(Contact contact, TrialEvent? touchDown, TrialEvent? takeOff) =>
        contact with
        {
            TouchDown = touchDown is { } down ? Or(down, contact.TouchDown) : contact.TouchDown,
            TakeOff = takeOff is { } off ? Or(off, contact.TakeOff) : contact.TakeOff,
        };

    public void Warn(MeasureList list)
    {
        if (_at.Count > 0)
        {
            list.Warn(Cautions.SetByHand(_at.Keys.Order().Select(Word)));
        }
    }

    /// <summary>Why the corrections can't be followed; null when they can.</summary>
    /// <param name="corrections">What was set.</param>
    /// <param name="found">The trials as found without them.</param>
    /// <param name="plate">The plate.</param>
    public static Refusal? Objection(
        ImmutableArray<EventCorrection> corrections,
        ImmutableArray<Trial> found,
        Plate plate
    )
    {
        foreach (IGrouping<int, EventCorrection> set in corrections.GroupBy(c => c.Trial))
        {
            if (found.FirstOrDefault(t => t.Number == set.Key) is not { } trial)
            {
                return Refusals.HandNoTrial(set.Key);
            }

            double?[] at = InOrder(trial.Events);
            foreach (EventCorrection c in set)
            {
                double sample = plate.SampleAt(c.TimeS);
                double? was = InOrder(trial.Events)[(int)c.Event];
                if (
                    !(sample >= 1 && sample <= plate.ForceN.Length - 2)
                    || at.All(other => other is not { } t || Math.Abs(t - c.TimeS) > FarS)
                )
                {
                    return Refusals.HandOutside(Word(c.Event), c.TimeS);
                }

                if (was is null && c.Event is not (TrialEvent.Onset or TrialEvent.PeakDownwardVelocity))
                {
                    return Refusals.HandNotThere(Word(c.Event));
                }

                at[(int)c.Event] = c.TimeS;
            }

            if (Disorder(at, 2 / plate.RateHz) is { } pair)
            {
                return Refusals.HandOutOfOrder(Word(pair.Before), Word(pair.After));
            }
        }

        return null;
    }

    /// <summary>Instants by <see cref="TrialEvent"/>.</summary>
    private static double?[] InOrder(TrialEvents e) =>
        [e.OnsetS, e.PeakDownwardVelocityS, e.BottomS, e.TakeOffS, e.TouchDownS, e.FirstTouchDownS];

    private static (TrialEvent Before, TrialEvent After)? Disorder(double?[] at, double leastS)
    {
        TrialEvent? before = null;
        foreach (
            TrialEvent next in (TrialEvent[])
                [
                    TrialEvent.FirstTouchDown,
                    TrialEvent.Onset,
                    TrialEvent.PeakDownwardVelocity,
                    TrialEvent.Bottom,
                    TrialEvent.TakeOff,
                    TrialEvent.TouchDown,
                ]
        )
        {
            if (at[(int)next] is not { } now)
            {
                continue;
            }

            // An onset and the lowest point of a push out of a held squat are one instant.
            bool mayMeet = next == TrialEvent.Bottom && before == TrialEvent.Onset;
            if (before is { } b && now - at[(int)b]!.Value < (mayMeet ? 0 : leastS))
            {
                return (b, next);
            }

            before = next;
        }

        return null;
    }

    private static Sentence Word(TrialEvent which) =>
        which switch
        {
            TrialEvent.Onset => Sentence.Of($"onset"),
            TrialEvent.PeakDownwardVelocity => Sentence.Of($"peak downward velocity"),
            TrialEvent.Bottom => Sentence.Of($"lowest point"),
            TrialEvent.TakeOff => Sentence.Of($"take-off"),
            TrialEvent.TouchDown => Sentence.Of($"touch-down"),
            _ => Sentence.Of($"first touch-down"),
        };
}
