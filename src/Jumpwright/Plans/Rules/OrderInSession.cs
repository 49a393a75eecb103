namespace Jumpwright.Plans.Rules;

/// <summary>
/// Low work comes before all else and the easiest of it first, what must be done fresh begins while the session is young, and the card has the order
/// of the time line.
/// </summary>
public sealed class OrderInSession : Limit
{
    public override string Id => "order-in-session";
    public override string Sentence =>
        "Low work comes before all else, what needs nothing before it first, and what must be done fresh begins while the session is young.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach ((SessionSlot slot, AthleteRequest who, var items) in Reading.Sessions(plan, request))
        {
            int rank = 0;
            double began = double.NegativeInfinity;
            double freshUntil = request.FreshUntil(slot) / 60.0;
            PlannedSession session = plan.Sessions.First(s => s.Slot.Id == slot.Id);
            foreach (PlannedItem item in items)
            {
                if (request.Catalogue.Find(item.Dose.ExerciseId) is not { } exercise)
                {
                    continue;
                }

                int its = OrderOfWork.RankOf(exercise, item.Dose.DropHeightM);
                int phase = OrderOfWork.PhaseOf(exercise, item.Dose.DropHeightM);
                double begins = session
                    .Rotation.Where(r => r.ExerciseId == exercise.Id && r.AthleteIds.Contains(who.Athlete.Id))
                    .Select(r => r.StartMin)
                    .DefaultIfEmpty(began)
                    .Min();
                if (its < rank || begins < began - 1e-9)
                {
                    yield return new(
                        Id,
                        who.Athlete.Id,
                        slot.Id,
                        1,
                        "exercises",
                        $"{exercise.SaidId} stands too late in {who.Athlete.Name}'s session {slot.Said}, or the time line has another order than the card."
                    );
                }

                if (phase == 1 && begins > freshUntil + 1e-9)
                {
                    yield return new(
                        Id,
                        who.Athlete.Id,
                        slot.Id,
                        begins - freshUntil,
                        "min",
                        $"{exercise.SaidId} must be done fresh; {who.Athlete.Name} would begin it at {begins:0.#} min of {slot.Said}, {freshUntil:0.#} min is the latest."
                    );
                }

                rank = Math.Max(rank, its);
                began = Math.Max(began, begins);
            }
        }
    }
}
