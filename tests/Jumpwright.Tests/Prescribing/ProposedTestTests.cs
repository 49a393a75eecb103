using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Prescribing;

public class ProposedTestTests(ITestOutputHelper output)
{
    private static readonly Catalogue Standard = Catalogue.Standard;
    private static readonly HashSet<string> Ids = [.. Standard.Exercises.Select(e => e.Id)];

    /// <summary>
    /// Over a thousand squads every proposal is judged by rules read again from the history, not by the gate that made it.
    /// </summary>
    [Fact]
    public void Proposals_OfAThousandSquads_BreakNoLimit()
    {
        int offered = 0;
        var refused = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int squad = 0; squad < 1000; squad++)
        {
            (ImmutableArray<History> athletes, ImmutableArray<Fixture> fixtures) = TestedSquad.Draw(squad);
            foreach (History history in athletes)
            {
                ImmutableArray<Ruling> rulings = SafetyRules.For(history, TestedSquad.Today, Ids);
                Profile profile = Profiling.Of(history, TestedSquad.Today);
                Ladder ladder = Ladders.For(profile, history, Standard, TestedSquad.Today);
                var gate = new TestGate(history, ladder, rulings, Standard, fixtures, TestedSquad.Today);
                if (
                    DropTests
                        .For(history, gate, Standard, TestedSquad.Today)
                        .TryGet(out TestProposal? test, out Refusal? no)
                )
                {
                    offered++;
                    string? breach = Breach(test, history, ladder, rulings, fixtures);
                    Assert.True(breach is null, $"squad {squad} {history.Athlete.Id}: {test.Because} {breach}");
                }
                else
                {
                    string why = no.Sentence[..Math.Min(28, no.Sentence.Length)];
                    refused[why] = refused.GetValueOrDefault(why) + 1;
                }
            }
        }

        output.WriteLine($"REP offered {offered}; " + string.Join("; ", refused.Select(r => $"{r.Key}: {r.Value}")));
        Assert.InRange(offered, 200, 1800);
    }

    private static string? Breach(
        TestProposal test,
        History history,
        Ladder ladder,
        ImmutableArray<Ruling> rulings,
        ImmutableArray<Fixture> fixtures
    )
    {
        LocalDate day = TestedSquad.Today;
        Exercise exercise = Standard.Find(test.ExerciseId)!;
        double height = test.DropHeightM!.Value;
        double[] jumped =
        [
            .. history.Trials.Where(t => t.Trial.Task == JumpTask.DropJump).Select(t => t.Labels.DropHeightM!.Value),
        ];
        if (ladder.Find(test.ExerciseId)!.State == RungState.Closed)
        {
            return "closed on the ladder";
        }

        if (height > (jumped.Length == 0 ? exercise.DropRangeM!.Value.MinM : jumped.Max() + 0.10) + 1e-9)
        {
            return "more than a step up";
        }

        foreach (Restriction r in history.Restrictions.Where(r => r.From <= day && r.Until >= day))
        {
            double most = double.Parse(r.Limit!.Split("<=")[1].Trim().Split(' ')[0]);
            if (r.Limit.StartsWith("drops", StringComparison.Ordinal) ? height > most + 1e-9 : test.Contacts > most)
            {
                return "over a restriction";
            }

            if (r.Forbidden.Contains("depth-jump"))
            {
                return "depth jumps are forbidden";
            }
        }

        if (history.Restrictions.Any(r => r.Until < day))
        {
            return "a restriction ran out: ask";
        }

        if (rulings.Any(r => r.Effect.Forbids(exercise.FactsAt(height))))
        {
            return "forbidden by a ruling";
        }

        if (
            history.Completed.Any(c =>
                Period.DaysBetween(c.Date, day) <= 2
                && Standard
                    .Find(c.ExerciseId)!
                    .RecoveryHours.Any(h => h.Value >= 48 && exercise.RecoveryHours.GetValueOrDefault(h.Key) > 0)
            )
        )
        {
            return "not recovered";
        }

        int today = history.Completed.Where(c => c.Date == day).Sum(c => c.Contacts);
        int level = history.Athlete.Level switch
        {
            TrainingLevel.Advanced => 140,
            TrainingLevel.Intermediate => 120,
            _ => 100,
        };
        if (today + test.Contacts > level)
        {
            return "too many contacts";
        }

        return height >= 0.30 - 1e-9 && fixtures.Any(f => f.Date == day || f.Date == day.PlusDays(1))
            ? "a match is near"
            : null;
    }
}
