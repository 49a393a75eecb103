using Google.OrTools.Sat;
using Jumpwright.Dosing;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rows;

/// <summary>The objective of <see cref="PlanPoints"/>: items by set, contrast pairs, and each week's sets by quality.</summary>
internal static class ObjectiveRows
{
    public static void Add(SquadModel squad)
    {
        LinearExprBuilder sum = LinearExpr.NewBuilder();
        foreach (Choice choice in squad.Choices)
        {
            long price = KitUse
                .Of(choice.Exercise, choice.Phase)
                .Sum(k =>
                    k.Count * choice.KitSecondsOfOneSet * squad.Scope.Prices.GetValueOrDefault((k.Key, choice.Slot.Id))
                );
            int least = choice.Menu.Dose.SetsMin;
            sum.AddTerm(
                choice.Done,
                (Points(squad) * choice.Menu.PointsOf(least))
                    - (squad.Scope.Fine * price * least)
                    - (
                        squad.Scope.Fine
                        * squad.Scope.GroupShares.GetValueOrDefault((choice.Slot.Id, choice.Exercise.Id))
                    )
            );
            for (int i = 0; i < choice.More.Length; i++)
            {
                sum.AddTerm(
                    choice.More[i],
                    (Points(squad) * choice.Menu.SetPoints[least + i]) - (squad.Scope.Fine * price)
                );
            }
        }

        foreach (((string session, string exercise, int literal), long extra) in squad.Scope.Extra)
        {
            foreach (AthleteRequest who in squad.Athletes)
            {
                if (squad.Find(who.Athlete.Id, session, exercise) is { } choice)
                {
                    sum.AddTerm(literal == 0 ? choice.Done : choice.More[literal - 1], extra);
                }
            }
        }

        foreach (KeepWish keep in squad.Request.Keeps)
        {
            if (squad.Find(keep.AthleteId, keep.SessionId, keep.ExerciseId) is not { } choice)
            {
                continue;
            }

            sum.AddTerm(choice.Done, Points(squad) * keep.ItemPoints);
            Dose dose = choice.Menu.Dose;
            if (keep.SetsPoints != 0 && keep.Sets >= dose.SetsMin && keep.Sets <= dose.SetsMax)
            {
                // Done with at least so many sets, and not with one more: exactly so many.
                sum.AddTerm(choice.AtLeast(keep.Sets), Points(squad) * keep.SetsPoints);
                if (keep.Sets < dose.SetsMax)
                {
                    sum.AddTerm(choice.AtLeast(keep.Sets + 1), -Points(squad) * keep.SetsPoints);
                }
            }
        }

        foreach (AthleteRequest who in squad.Athletes)
        {
            foreach (ContrastPair pair in who.Pairs)
            {
                Choice? heavy = squad.Find(who.Athlete.Id, pair.SessionId, pair.HeavyExerciseId);
                if (heavy is not null)
                {
                    sum.AddTerm(heavy.Done, Points(squad) * pair.Points);
                }
            }

            foreach (QualityGoal goal in who.Goals)
            {
                AddGoal(squad, who, goal, sum);
            }
        }

        if (squad.Scope.Only is null)
        {
            EvennessRows.Add(squad, sum);
        }

        squad.Model.Maximize(sum);
    }

    private static void AddGoal(SquadModel squad, AthleteRequest who, QualityGoal goal, LinearExprBuilder sum)
    {
        var training = squad
            .ByAthlete(who)
            .Where(c =>
                PlanRequest.WeekOf(c.Slot.Date) == goal.WeekOf
                && squad.Request.Trains(c.Menu.ExerciseId) == goal.Quality
            )
            .ToList();
        if (training.Count == 0)
        {
            return;
        }

        LinearExprBuilder spent = LinearExpr.NewBuilder();
        foreach (var slope in goal.SetPoints.GroupBy(p => p).Where(g => g.Key > 0))
        {
            IntVar sets = squad.Model.NewIntVar(
                0,
                slope.Count(),
                $"{who.Athlete.Id}/{goal.WeekOf:uuuu-MM-dd}/{goal.Quality}/{slope.Key}"
            );
            spent.Add(sets);
            sum.AddTerm(sets, Points(squad) * slope.Key);
        }

        LinearExprBuilder done = LinearExpr.NewBuilder();
        foreach (Choice choice in training)
        {
            choice.AddTo(done, 1);
        }

        squad.Model.Add((LinearExpr)spent <= (LinearExpr)done);
    }

    private static long Points(SquadModel squad) => Scope.PointScale * squad.Scope.Fine;
}
