using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Planning.Rows;

/// <summary>Hours between demanding sessions, tissue by tissue, and from what was done before.</summary>
internal static class RecoveryRows
{
    public static void Add(SquadModel squad)
    {
        foreach (AthleteRequest who in squad.Athletes)
        {
            foreach (Tissue tissue in Enum.GetValues<Tissue>())
            {
                AddRecent(squad, who, tissue);
                AddBetween(squad, who, tissue);
            }
        }
    }

    private static void AddRecent(SquadModel squad, AthleteRequest who, Tissue tissue)
    {
        foreach (RecentWork recent in who.Recent.Where(r => r.Tissue == tissue))
        {
            foreach (Choice choice in squad.ByAthlete(who))
            {
                if (
                    OrderOfWork.RecoveryHoursOf(choice.Exercise, tissue) > 0
                    && choice.Slot.StartUtc - recent.EndUtc < Duration.FromHours(recent.RecoveryHours)
                    && squad.Asked.ForLimit(
                        "recovery-from-recent-work",
                        $"{who.Athlete.Id}:{tissue}",
                        $"{who.Athlete.Name} recovers from {SaidExercise.ById(recent.ExerciseId):small}: {recent.RecoveryHours} h for the {Word(tissue)}."
                    )
                )
                {
                    squad.Close(choice);
                }
            }
        }
    }

    private static void AddBetween(SquadModel squad, AthleteRequest who, Tissue tissue)
    {
        var demanding = squad
            .ByAthlete(who)
            .Select(c => (Choice: c, Hours: OrderOfWork.RecoveryHoursOf(c.Exercise, tissue)))
            .Where(d => d.Hours > 0)
            .ToList();
        var slots = squad.Slots.Where(s => demanding.Exists(d => d.Choice.Slot == s)).ToList();
        Dictionary<(SessionSlot, int), BoolVar> worked = [];
        for (int i = 0; i < slots.Count; i++)
        {
            for (int j = i + 1; j < slots.Count; j++)
            {
                Duration gap = slots[j].StartUtc - slots[i].EndUtc;
                int[] levels =
                [
                    .. demanding
                        .Where(d => d.Choice.Slot == slots[i] && gap < Duration.FromHours(d.Hours))
                        .Select(d => d.Hours)
                        .Distinct()
                        .Order(),
                ];
                if (
                    levels.Length > 0
                    && squad.Asked.ForLimit(
                        "recovery-hours",
                        $"{who.Athlete.Id}:{tissue}",
                        $"{who.Athlete.Name}'s {Word(tissue)} needs its hours from one demanding session to the next."
                    )
                )
                {
                    // All levels that this gap is too short for: at least the lowest of them was worked in the first.
                    squad.Model.AddAtMostOne([Worked(slots[i], levels[0]), Worked(slots[j], 1)]);
                }
            }
        }

        BoolVar Worked(SessionSlot slot, int hours)
        {
            if (!worked.TryGetValue((slot, hours), out BoolVar? literal))
            {
                literal = squad.Model.NewBoolVar($"{who.Athlete.Id}/{slot.Id}/{tissue}/{hours}");
                worked[(slot, hours)] = literal;
                foreach (var (choice, its) in demanding)
                {
                    if (choice.Slot == slot && its >= hours)
                    {
                        squad.Model.AddImplication(choice.Done, literal);
                    }
                }
            }

            return literal;
        }
    }

    private static Sentence Word(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => $"Achilles tendon and ankle",
            Tissue.Patellar => $"patellar tendon and knee",
            Tissue.Hip => $"hip",
            _ => $"bone",
        };
}
