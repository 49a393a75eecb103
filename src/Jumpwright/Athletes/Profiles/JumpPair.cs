using System.Collections.Immutable;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes.Profiles;

/// <summary>
/// A jump of some task beside the countermovement jump of the same day: same measure, same method, same device. What two days differ in
/// (sleep, work, warm-up) is no difference between two jumps, so that heights of two days are never compared.
/// </summary>
/// <param name="Jump">The jump of that task.</param>
/// <param name="Standing">The countermovement jump.</param>
internal sealed record JumpPair(Evidence Jump, Evidence Standing)
{
    private static readonly ImmutableArray<string> Heights =
    [
        MeasureNames.JumpHeight,
        MeasureNames.JumpHeightFlightTime,
    ];

    /// <summary>The pair of the latest day that has one; null where no day has.</summary>
    internal static JumpPair? Latest(History history, LocalDate asOf, JumpTask task)
    {
        history = history with
        {
            Trials =
            [
                .. history.Trials.Where(t => t.Trial.Task == task || t.Trial.Task == JumpTask.CountermovementJump),
            ],
        };
        LocalDate? day = asOf;
        while (day is { } on)
        {
            (JumpPair? pair, day) = On(history, on, task);
            if (pair is not null)
            {
                return pair;
            }
        }

        return null;
    }

    /// <summary>Whether both were jumped at all, on whatever days and devices.</summary>
    internal static bool BothSeen(Known known, JumpTask task) =>
        Seen(known, task) && Seen(known, JumpTask.CountermovementJump);

    private static bool Seen(Known known, JumpTask task) => Heights.Any(h => known.Find(h, task) is not null);

    /// <summary>The pair as known on that day; without one, the next earlier day on which there could be one.</summary>
    private static (JumpPair? Pair, LocalDate? Earlier) On(History history, LocalDate day, JumpTask task)
    {
        var known = new Known(history, day, CurrentMeasures.Of(history, day));
        LocalDate? earlier = null;
        foreach (string height in Heights)
        {
            foreach (Evidence jump in known.All(height, task).Where(e => e.Measure.Value > 0))
            {
                Evidence? standing = known
                    .All(height, JumpTask.CountermovementJump)
                    .FirstOrDefault(e =>
                        e.Device == jump.Device && e.Measure.Method == jump.Measure.Method && e.Measure.Value > 0
                    );
                if (standing?.Date == jump.Date)
                {
                    return (new JumpPair(jump, standing), null);
                }

                if (standing is not null)
                {
                    LocalDate both = LocalDate.Min(jump.Date, standing.Date);
                    earlier = earlier is { } seen ? LocalDate.Max(seen, both) : both;
                }
            }
        }

        return (null, earlier);
    }
}
