using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>
/// A box stands no more than a step above one that the log holds enough clean sessions from: of the same exercise above the lowest it is done from, and of
/// drops that ask as much in any case. What the plan itself holds does not count: whether it went well is seen from the log, and then the plan is made again.
/// </summary>
public sealed class DropHeightRise : Limit
{
    public override string Id => "drop-height-rise";
    public override string Sentence =>
        "A drop is no more than a step higher than the log holds clean sessions from, and what is new begins at its lowest.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach (var (slot, who, item, exercise) in Reading.Items(plan, request))
        {
            if (item.Dose.DropHeightM is not { } height)
            {
                continue;
            }

            double most = Most(exercise, who, request.Catalogue);
            if (height > most + 1e-6)
            {
                yield return new(
                    Id,
                    who.Athlete.Id,
                    slot.Id,
                    Math.Round(height - most, 4),
                    "m",
                    $"{exercise.SaidId} of {who.Athlete.Name} in {slot.Said} is from {new Length(height):0 cm}; the log leads to {new Length(most):0 cm}."
                );
            }
        }
    }

    private static double Most(Exercise exercise, AthleteRequest who, Catalogue catalogue)
    {
        double any = Highest(
            who,
            d =>
                catalogue.Find(d.ExerciseId) is { } done
                && (done.IsDepthJump || !exercise.IsDepthJump)
                && (done.SingleLegLanding || !exercise.SingleLegLanding)
        );
        double own = Highest(who, d => d.ExerciseId == exercise.Id);
        double lowest = exercise.DropRangeM?.MinM ?? 0;
        return Math.Min(any + who.DropStepM, own >= lowest - 1e-9 ? own + who.DropStepM : lowest);
    }

    /// <summary>The highest box that stands with enough days from it or a higher one; 0 where there is none.</summary>
    private static double Highest(AthleteRequest who, Func<TrainedDrop, bool> counts)
    {
        TrainedDrop[] drops = [.. who.Drops.Clean.Where(counts)];
        return drops
            .Select(d => d.HeightM)
            .Where(h =>
                drops.Where(d => d.HeightM >= h - 1e-9).Select(d => d.Date).Distinct().Count() >= who.Drops.Sessions
            )
            .DefaultIfEmpty(0)
            .Max();
    }
}
