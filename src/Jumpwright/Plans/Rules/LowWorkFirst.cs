using Jumpwright.Exercises;

namespace Jumpwright.Plans.Rules;

/// <summary>
/// A session begins with landing or low ankle work where the menu has any; where it has none, nothing of high intensity
/// is done.
/// </summary>
public sealed class LowWorkFirst : Limit
{
    public override string Id => "low-work-first";
    public override string Sentence =>
        "A session begins with landing or low ankle work; without it nothing of high intensity is done.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach ((SessionSlot slot, AthleteRequest who, var items) in Reading.Sessions(plan, request))
        {
            if (items.IsEmpty || request.Catalogue.Find(items[0].Dose.ExerciseId) is not { } first)
            {
                continue;
            }

            bool lowOpen = who.Menu.Any(m =>
                m.SessionId == slot.Id && IsLow(request.Catalogue, m.Dose.ExerciseId, m.Dose.DropHeightM)
            );
            bool startsLow = OrderOfWork.PhaseOf(first, items[0].Dose.DropHeightM) == 0;
            int high = items.Count(i => i.Dose.HighIntensity);
            if (!startsLow && (lowOpen || high > 0))
            {
                yield return new(
                    Id,
                    who.Athlete.Id,
                    slot.Id,
                    lowOpen ? 1 : high,
                    "exercises",
                    $"{who.Athlete.Name}'s session {slot.Said} begins with {first.SaidId:small}, not with landing or low ankle work."
                );
            }
        }
    }

    private static bool IsLow(Catalogue catalogue, string exerciseId, double? dropHeightM) =>
        catalogue.Find(exerciseId) is { } exercise && OrderOfWork.PhaseOf(exercise, dropHeightM) == 0;
}
