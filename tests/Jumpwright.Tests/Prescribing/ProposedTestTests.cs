using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Exercises;
using Jumpwright.Prescribing;
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
    /// Over a thousand squads every proposal, of drops, loads, run-ups and untested qualities alike, is judged by rules read again
    /// from the history, not by the gate that made it; and what is offered to one athlete on one day is judged together.
    /// </summary>
    [Fact]
    public void Proposals_OfAThousandSquads_BreakNoLimit()
    {
        var offered = new SortedDictionary<string, int>(StringComparer.Ordinal);
        var refused = new Dictionary<string, int>(StringComparer.Ordinal);
        int lacking = 0;
        int tooNear = 0;
        for (int squad = 0; squad < 1000; squad++)
        {
            // Every weekday in turn.
            DrawnSquad drawn = TestedSquad.Draw(squad).Later(squad % 7);
            foreach (History history in drawn.Athletes)
            {
                ImmutableArray<Ruling> rulings = SafetyRules.For(history, drawn.Day, Ids);
                Profile profile = Profiling.Of(history, drawn.Day);
                Ladder ladder = Ladders.For(profile, history, Standard, drawn.Day);
                OpenWork open = new(ladder, rulings, Standard, drawn.Squad.Kit);
                TestGate gate = new TestGate(history, open, drawn.Squad, drawn.Day).Beside(drawn.Planned);
                var curves = AthleteCurves.Of(history, Standard, rulings, drawn.Day, drawn.Squad.Kit);
                var tests = new List<TestProposal>();
                foreach (TestOffer offer in NextTests.For(history, profile, gate, Standard, curves, drawn.Day))
                {
                    if (offer.Test.TryGet(out TestProposal? test, out Refusal? no))
                    {
                        tests.Add(test);
                        offered[offer.Question] = offered.GetValueOrDefault(offer.Question) + 1;
                        if (test.Ask.InsteadOfBar is { } kit)
                        {
                            offered[kit] = offered.GetValueOrDefault(kit) + 1;
                        }

                        string? breach = Breach(test, history, ladder, rulings, drawn);
                        Assert.True(breach is null, $"squad {squad} {history.Athlete.Id}: {test.Because} {breach}");
                    }
                    else
                    {
                        lacking += no.Sentence.Contains("light dumbbells or a weight vest", StringComparison.Ordinal)
                            ? 1
                            : 0;
                        string why = $"{offer.Question}, {no.Brief ?? no.Sentence[..Math.Min(40, no.Sentence.Length)]}";
                        refused[why] = refused.GetValueOrDefault(why) + 1;
                    }
                }

                // Contacts are not spent on trials that settle nothing, however many they are.
                foreach (Finding finding in profile.Findings.Where(f => f.IsTooNear))
                {
                    tooNear++;
                    Assert.Equal(FindingVerdict.Unclear, finding.Verdict);
                    Assert.DoesNotContain(
                        tests,
                        t =>
                            t.Because.ToString()
                                .EndsWith(
                                    $"{QualityNames.Of(finding.Quality)} isn't settled.",
                                    StringComparison.Ordinal
                                )
                    );
                }

                string? together = TooMuchTogether(tests, history, ladder, drawn);
                Assert.True(together is null, $"squad {squad} {history.Athlete.Id}: {together}");
            }
        }

        output.WriteLine("offered " + string.Join("; ", offered.Select(r => $"{r.Key}: {r.Value}")));
        output.WriteLine(
            "refused "
                + string.Join("; ", refused.OrderByDescending(r => r.Value).Take(40).Select(r => $"{r.Key}: {r.Value}"))
        );
        // Whoever is too light for the bar is offered what the kit has instead, or told what is missing.
        Assert.True(offered.GetValueOrDefault("light-dumbbells") + offered.GetValueOrDefault("weight-vest") > 0);
        Assert.True(lacking > 0);
        Assert.True(tooNear > 20, $"{tooNear} findings too near for trials");
        Assert.All(
            (string[])["drop height", "load of a jump", "maximum of the heavy pull", "run-up speed"],
            question => Assert.InRange(offered.GetValueOrDefault(question), 10, 1900)
        );
    }

    /// <summary>
    /// A contact that somebody typed, on the floor or in a log, holds the next height back like one that a plate measured: three
    /// trials of 600 ms from the highest drop, and nothing higher is offered; three of 180 ms change nothing.
    /// </summary>
    [Fact]
    public void Drops_StoppedByTypedContacts_AreNotOfferedHigher()
    {
        int cases = 0;
        for (int squad = 0; squad < 400 && cases < 10; squad++)
        {
            DrawnSquad drawn = TestedSquad.Draw(squad);
            foreach (History history in drawn.Athletes)
            {
                ImmutableArray<Ruling> rulings = SafetyRules.For(history, drawn.Day, Ids);
                Ladder ladder = Ladders.For(Profiling.Of(history, drawn.Day), history, Standard, drawn.Day);
                OpenWork open = new(ladder, rulings, Standard, drawn.Squad.Kit);
                var gate = new TestGate(history, open, drawn.Squad, drawn.Day);
                var trials = DropJumps.Of(history, drawn.Day);
                if (
                    trials.IsEmpty
                    || !DropTests.For(history, gate, Standard, drawn.Day).TryGet(out TestProposal? test, out _)
                    || test.Ask.DropM <= trials.Max(t => t.DropM) + 0.01
                )
                {
                    continue;
                }

                cases++;
                double highest = trials.Max(t => t.DropM);
                History Typed(double contactS) =>
                    history with
                    {
                        Completed =
                        [
                            .. history.Completed,
                            .. Enumerable
                                .Range(1, 3)
                                .Select(set => new CompletedItem(
                                    history.Athlete.Id,
                                    drawn.Day.PlusDays(-1),
                                    "",
                                    test.ExerciseId,
                                    1,
                                    1,
                                    2,
                                    0,
                                    0,
                                    null,
                                    null,
                                    highest,
                                    null
                                )
                                {
                                    Set = set,
                                    ContactTimeS = contactS,
                                }),
                        ],
                    };

                Outcome<TestProposal> quick = DropTests.For(Typed(0.18), gate, Standard, drawn.Day);
                Assert.Equal(test.Ask.DropM, quick.Require().Ask.DropM);
                // Just over the ceiling is enough, however quick the measured ones were: neither kind talks the other away.
                if (DropTests.For(Typed(0.3), gate, Standard, drawn.Day).TryGet(out TestProposal? late, out _))
                {
                    Assert.True(late.Ask.DropM <= highest + 0.01, $"squad {squad} {history.Athlete.Id}: 300 ms");
                }

                if (DropTests.For(Typed(0.6), gate, Standard, drawn.Day).TryGet(out TestProposal? slow, out _))
                {
                    Assert.True(slow.Ask.DropM <= highest + 0.01, $"squad {squad} {history.Athlete.Id}");
                }
            }
        }

        Assert.InRange(cases, 5, 1000);
    }

    /// <summary>
    /// All tests of a day together with what is done and planned: the handbook's contacts, the week's, the hard ones, other jumping, and
    /// what a week may ask of a tissue after the one before it, read again.
    /// </summary>
    private static string? TooMuchTogether(List<TestProposal> tests, History history, Ladder ladder, DrawnSquad drawn)
    {
        LocalDate day = drawn.Day;
        int contacts = tests.Sum(t => t.Contacts);
        if (contacts == 0)
        {
            return null;
        }

        bool careful =
            history.Athlete.AgeOn(day) is not { } age || age < 16 || history.Restrictions.Any(r => r.From <= day);
        int level = history.Athlete.Level switch
        {
            TrainingLevel.Advanced => 120,
            TrainingLevel.Intermediate => 100,
            _ => 80,
        };
        int session = careful ? Math.Min(60, level) : level;
        if (ladder.ComingBack is not null)
        {
            session /= 2;
        }

        List<(LocalDate Day, int Contacts, string Exercise)> all =
        [
            .. history.Completed.Select(c => (c.Date, c.Contacts, c.ExerciseId)),
            .. drawn.Planned.Select(p => (p.Date, p.Contacts, p.ExerciseId!)),
            .. tests.Select(t => (day, t.Contacts, t.ExerciseId)),
        ];
        int today = all.Where(d => d.Day == day).Sum(d => d.Contacts);
        int sevenDays = all.Where(d => Period.DaysBetween(d.Day, day) is >= 0 and < 7).Sum(d => d.Contacts);
        LocalDate monday = day.PlusDays(1 - (int)day.DayOfWeek);
        List<(LocalDate Day, int Contacts, string Exercise)> week =
        [
            .. all.Where(d => d.Day >= monday && d.Day < monday.PlusDays(7)),
        ];
        int hard = (
            careful ? 20
            : level == 120 ? 40
            : level == 100 ? 30
            : 20
        );
        int hardAsked =
            tests.Where(t => Standard.Find(t.ExerciseId)!.IsHighIntensityAt(t.Ask.DropM)).Sum(t => t.Contacts)
            + drawn.Planned.Where(p => p.Date == day && p.HighIntensity).Sum(p => p.Contacts);
        int other = OtherJumping.In(monday, history.Athlete, drawn.Squad, LimitBook.Standard).Jumps;
        int beside = Math.Max(session, (int)(4.5 * session) - other);
        return today > session ? $"{today} contacts, {session} allowed"
            : sevenDays > 2.5 * session ? $"{sevenDays} contacts in the week"
            : tests.Any(t => Standard.Find(t.ExerciseId)!.IsHighIntensityAt(t.Ask.DropM)) && hardAsked > hard
                ? $"{hardAsked} hard contacts"
            : other > 0 && week.Sum(d => d.Contacts) > beside ? $"{other} other jumps fill the week"
            : Grown(
                tests,
                week,
                history,
                monday,
                other,
                session,
                careful ? 1.10
                    : level == 120 ? 1.20
                    : level == 100 ? 1.15
                    : 1.10
            )
                ?? Grown(
                    tests,
                    [.. all.Where(d => Period.DaysBetween(d.Day, day) is >= 0 and < 7)],
                    history,
                    day.PlusDays(-6),
                    other,
                    session,
                    careful ? 1.10
                        : level == 120 ? 1.20
                        : level == 100 ? 1.15
                        : 1.10
                );
    }

    /// <summary>A tissue that the tests load more than growth after the weeks before allows, in contacts × tier.</summary>
    private static string? Grown(
        List<TestProposal> tests,
        List<(LocalDate Day, int Contacts, string Exercise)> week,
        History history,
        LocalDate first,
        int other,
        int session,
        double times
    )
    {
        foreach (Tissue tissue in Enum.GetValues<Tissue>())
        {
            double asked = week.Sum(d => d.Contacts * Tier(d.Exercise));
            double[] weeks =
            [
                .. Enumerable
                    .Range(1, 4)
                    .Select(n =>
                        history
                            .Completed.Where(c =>
                                Period.DaysBetween(c.Date, first) is var ago && ago <= 7 * n && ago > 7 * (n - 1)
                            )
                            .Sum(c => (double)c.Contacts * Tier(c.ExerciseId))
                    ),
            ];
            double before = Math.Max(weeks[0], weeks.Average());
            double most = Math.Max(1.5 * session, (times * (before + other)) - other);
            if (tests.Any(t => t.Contacts * Tier(t.ExerciseId) > 0) && asked > most + 1e-9)
            {
                return $"{asked} on {tissue} in the week from {first}, {most:0.0} allowed";
            }

            int Tier(string exercise) => Standard.Find(exercise)!.Demand.GetValueOrDefault(tissue);
        }

        return null;
    }

    private static string? Breach(
        TestProposal test,
        History history,
        Ladder ladder,
        ImmutableArray<Ruling> rulings,
        DrawnSquad drawn
    )
    {
        LocalDate day = drawn.Day;
        Exercise exercise = Standard.Find(test.ExerciseId)!;
        double? height = test.Ask.DropM;
        double[] jumped =
        [
            .. history.Trials.Where(t => t.Trial.Task == JumpTask.DropJump).Select(t => t.Labels.DropHeightM!.Value),
        ];
        if (ladder.Find(test.ExerciseId)!.State == RungState.Closed)
        {
            return "closed on the ladder";
        }

        if (exercise.DropRangeM is { } range)
        {
            double most = exercise.IsDepthJump && jumped.Length > 0 ? jumped.Max() + 0.10 : range.MinM;
            if (!(height <= most + 1e-9) || !range.Contains(height.Value))
            {
                return "more than a step up, or not a height of it";
            }
        }

        if (test.Ask.LoadKg is > 0 and < 15 != test.Ask.InsteadOfBar is not null)
        {
            return "a bar does not weigh that";
        }

        string[] lighter = ["light-dumbbells", "weight-vest"];
        if (test.Ask.InsteadOfBar is { } other && !(lighter.Contains(other) && drawn.Squad.Kit.Any(k => k.Id == other)))
        {
            return "nothing stands in for the bar";
        }

        if (
            exercise
                .Kit.Where(need => test.Ask.InsteadOfBar is null || need.Id != "hex-bar")
                .Any(need => drawn.Squad.Kit.Where(k => k.Id == need.Id).Sum(k => k.Count) < need.Count)
        )
        {
            return "the kit is not at hand";
        }

        if (exercise.Load is not null)
        {
            double[] lifted =
                exercise.ContactsPerRep > 0
                    ? [.. history.Trials.Select(t => t.Labels.ExternalLoadKg).OfType<double>()]
                    : [.. history.Screens.Where(s => s.Test == "hex-bar-load").Select(s => s.Value)];
            if (!(test.Ask.LoadKg <= (1.10 * lifted.Max()) + 1e-9))
            {
                return "more than 110 % of the heaviest measured";
            }

            // What counts as light where nobody set it otherwise: a fifth of body mass.
            double light = history.Overrides.SingleOrDefault(o => o.Limit == "light-load")?.Value ?? 0.20;
            if (exercise.ContactsPerRep > 0 && !(test.Ask.LoadKg <= (light * history.Athlete.BodyMassKg) + 1e-9))
            {
                return "more than counts as a light load";
            }
        }

        if (test.Ask.SpeedMS is { } speed)
        {
            double[] run =
            [
                .. history
                    .Screens.Where(s => s.Test == "run-up-speed")
                    .Where(s => (s.Side == Side.Both) == (exercise.Limb == "both"))
                    .Select(s => s.Value),
            ];
            if (speed > (1.10 * run.Max()) + 1e-9)
            {
                return "more than 110 % of the fastest run-up";
            }
        }

        foreach (Restriction r in history.Restrictions.Where(r => r.From <= day && r.Until >= day))
        {
            double most = double.Parse(r.Limit!.Split("<=")[1].Trim().Split(' ')[0]);
            if (r.Limit.StartsWith("drops", StringComparison.Ordinal) ? height > most + 1e-9 : test.Contacts > most)
            {
                return "over a restriction";
            }

            if (r.Forbidden.Contains("depth-jump") && exercise.IsDepthJump)
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

        bool hard = exercise.IsHighIntensityAt(height);
        bool top = exercise.Demand.Values.Any(tier => tier == 3);
        // What a rule of pain holds back takes no landing on the floor on the eve of a match, or on its day.
        bool lands =
            exercise.Landing == "floor"
            && rulings.Any(r => r.Effect is TierAtMost t && exercise.Demand.GetValueOrDefault(t.Tissue) > 0);
        return drawn.Squad.Fixtures.Any(f =>
            Period.DaysBetween(day, f.Date) is var days
            && ((hard && days is 0 or 1) || (lands && days is 0 or 1) || (top && Math.Abs(days) <= 2))
        )
            ? "a match is near"
            : null;
    }
}
