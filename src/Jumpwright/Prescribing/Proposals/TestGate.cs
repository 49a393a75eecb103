using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>
/// Whether a test may be offered now: the ladder has it open, its kit is at hand, no ruling forbids it, every tissue it works hard
/// has recovered, its contacts and what they ask of every tissue fit into the day and the week beside what was done and what is
/// offered before it, no fixture is near, and height, load and speed go up by a step at most. Unknown closes.
/// </summary>
public sealed class TestGate(History history, OpenWork today, Squad squad, LocalDate day)
{
    /// <summary>Hours that an exercise nobody knows is taken to need, as the longest of the catalogue (house rule).</summary>
    private const int UnknownRecoveryHours = 72;

    private readonly LimitBook _limits = LimitBook.For(history, day);
    private ImmutableArray<TestProposal> _before = [];
    private ImmutableArray<PlannedContacts> _planned = [];

    /// <summary>The squad's kit.</summary>
    internal ImmutableArray<KitCount> Kit => squad.Kit;

    /// <summary>The exercise of that id, or null.</summary>
    internal Exercise? Find(string exerciseId) => today.Catalogue.Find(exerciseId);

    /// <summary>The limits in force.</summary>
    internal LimitBook Limits => _limits;

    /// <summary>Pain above which a test is stopped, of 10.</summary>
    internal double PainStopsAbove => PainAtWork.StopAbove(today.Rulings, _limits);

    /// <summary>The same gate once that test is offered too: its contacts count.</summary>
    public TestGate After(TestProposal offered) =>
        new(history, today, squad, day) { _before = _before.Add(offered), _planned = _planned };

    /// <summary>The same gate beside what is planned: those contacts are taken already, done or not.</summary>
    public TestGate Beside(ImmutableArray<PlannedContacts> planned) =>
        new(history, today, squad, day) { _before = _before, _planned = planned };

    /// <summary>Contacts that the test costs.</summary>
    internal static int ContactsOf(Exercise exercise, int trials) => trials * exercise.ContactsOfOneRep;

    /// <summary>The exercise, or a sentence that says what stands against it.</summary>
    public Outcome<Exercise> Check(TestAsk ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        if (today.Catalogue.Find(ask.ExerciseId) is not { } exercise)
        {
            return Refusal.Of($"The catalogue has no '{ask.ExerciseId}'.");
        }

        ExerciseFacts facts = exercise.FactsAt(ask.DropM);
        return Closed(exercise, ask)
            ?? TooFar(exercise, ask)
            ?? NotRecovered(exercise)
            ?? TooMany(exercise, ask)
            ?? NearFixture(exercise, facts)
            ?? (Outcome<Exercise>)exercise;
    }

    private Refusal? Closed(Exercise exercise, TestAsk ask) =>
        today.Of(exercise, ask.DropM, ask.InsteadOfBar).First is not { } closing
            ? null
            : Refusal.Of(
                closing.By switch
                {
                    ClosedBy.Ruling => $"{exercise.Said} is not offered: {closing.Because}",
                    ClosedBy.Ladder => $"{exercise.Said} is closed on the ladder: test something below it first.",
                    _ => closing.Because,
                }
            ) with
            {
                Brief = closing.Ruling is { } ruling ? closing.Brief.As(new Waits(ruling)) : closing.Brief,
            };

    private Refusal? TooFar(Exercise exercise, TestAsk ask) =>
        TooHigh(exercise, ask) ?? TooHeavy(exercise, ask) ?? TooFast(exercise, ask);

    private Refusal? TooHigh(Exercise exercise, TestAsk ask)
    {
        if (exercise.DropRangeM is not { } range)
        {
            return null;
        }

        if (ask.DropM is not { } height || !range.Contains(height))
        {
            return Refusal.Of($"{exercise.Said} is not done from that height.") with
            {
                Brief = $"not done from that height",
            };
        }

        double step = _limits["drop-step"];
        double led = (today.Ladder.Drops.AnyM(exercise, today.Catalogue) ?? 0) + step;
        return ask.HighestDropM switch
        {
            { } top when height > top + step + 1e-9 => Refusal.Of(
                $"{new Length(height):0 cm} is more than {new Length(step):0 cm} above the highest drop measured ({new Length(top):0 cm})."
            ) with
            {
                Brief = $"too great a step up",
            },
            null when height > range.MinM + 1e-9 => Refusal.Of(
                $"No drop was measured: begin at {new Length(range.MinM):0 cm}."
            ) with
            {
                Brief = $"no lower drop was measured",
            },
            // Nobody is tested from a box that neither a test nor the log leads to.
            null when height > led + 1e-9 => Refusal.Of(
                $"No drop was measured, and the log leads to {new Length(led):0 cm} only: begin there."
            ) with
            {
                Brief = $"no lower drop was measured",
            },
            _ => null,
        };
    }

    private Refusal? TooHeavy(Exercise exercise, TestAsk ask)
    {
        if (exercise.Load is not { } range)
        {
            return null;
        }

        if (ask.LoadKg is not { } load)
        {
            return Refusal.Of($"{exercise.Said}: the load is not known, so it is not offered as a test.") with
            {
                Brief = $"no load is known",
            };
        }

        return TestLoads.MostKg(exercise, history.Athlete.BodyMassKg, _limits, ask.HeaviestKg) is not { } most
                ? Refusal.Of($"{exercise.Said}: nothing measured bounds the load, so it is not offered as a test.") with
                {
                    Brief = $"no load is known",
                }
            : ask.InsteadOfBar is null && load > 0 && load < DoseRules.LightestBar.Value - 1e-9
                ? Refusal.Of(
                    $"{new Mass(load):0.# kg} is less than the lightest bar ({new Mass(DoseRules.LightestBar.Value):0 kg}), so it is not offered with a bar."
                ) with
                {
                    Brief = $"no bar is light enough",
                }
            : load > most + 1e-9
                ? Refusal.Of(
                    $"{new Mass(load):0.# kg} is above {new Mass(most):0.# kg}, the most for this athlete now."
                ) with
                {
                    Brief = $"too heavy for now",
                }
            : null;
    }

    private static Refusal? TooFast(Exercise exercise, TestAsk ask) =>
        exercise.RunUpSteps is null || ask.SpeedMS is not { } speed ? null
        : ask.FastestMS is not { } fastest
            ? Refusal.Of($"{exercise.Said}: no run-up was timed yet, so no speed is asked for.") with
            {
                Brief = $"no run-up was timed",
            }
        : speed > (fastest * Bounds.Share.Value / 100) + 1e-9
            ? Refusal.Of(
                $"{speed:0.0} m/s is above {Bounds.Share.Value:0} % of the fastest run-up measured ({fastest:0.0} m/s)."
            ) with
            {
                Brief = $"too fast for now",
            }
        : null;

    private Refusal? NotRecovered(Exercise exercise)
    {
        // What is planned before it counts as done; what is planned after it must be able to follow the test.
        foreach (
            (string? id, LocalDate date) in history
                .Completed.Where(c => c.Date <= day)
                .Select(c => ((string?)c.ExerciseId, c.Date))
                .Concat(history.PossiblyDone.Where(p => p.Date <= day).Select(p => ((string?)p.ExerciseId, p.Date)))
                .Concat(_planned.Where(p => p.Date != day).Select(p => (p.ExerciseId, p.Date)))
        )
        {
            // Nobody wrote the hours: the session may have ended late, the test may start early.
            int hours = Math.Max(0, 24 * (Math.Abs(Period.DaysBetween(date, day)) - 1));
            Exercise? known = id is null ? null : today.Catalogue.Find(id);
            foreach ((Tissue tissue, int needs) in exercise.RecoveryHours)
            {
                int its =
                    known is null ? UnknownRecoveryHours
                    : known.RecoveryHours.TryGetValue(tissue, out int h) ? h
                    : 0;

                // The one that comes first asks for the hours after it.
                int asks = date > day ? needs : its;
                if (needs > 0 && its > 0 && hours < asks)
                {
                    Sentence name =
                        known is not null ? Sentence.Of($"{known.Said}")
                        : id is not null ? Sentence.Of($"{id}")
                        : Sentence.Of($"what is planned");
                    return date > day
                        ? Refusal.Of(
                            $"{exercise.Said} works what {name} is to work on {date:uuuu-MM-dd}: {asks} hours must lie between."
                        ) with
                        {
                            Brief = $"too near to {name} on {date:uuuu-MM-dd}",
                        }
                        : Refusal.Of(
                            $"{exercise.Said} works what {name} worked on {date:uuuu-MM-dd}: {asks} hours must lie between."
                        ) with
                        {
                            Brief = $"too soon after {name} on {date:uuuu-MM-dd}",
                        };
                }
            }
        }

        return null;
    }

    private Refusal? TooMany(Exercise exercise, TestAsk ask) =>
        new TestRoom(history, today, squad, _limits, day) { Before = _before, Planned = _planned }.Holds(exercise, ask);

    private Refusal? NearFixture(Exercise exercise, ExerciseFacts facts)
    {
        // Nobody wrote the hour of the test: every day that the hours round a fixture touch counts.
        int topTier = exercise.Demand.Values.Any(tier => tier >= 3)
            ? (int)Math.Ceiling(_limits["top-tier-hours-round-fixture"] / 24)
            : -1;
        int quiet = facts.HighIntensity ? _limits.Whole("high-intensity-days-before-fixture") : -1;
        int soreDays = _limits.Whole(SoreBeforeFixture.LimitId);
        if (
            squad.Fixtures.FirstOrDefault(f =>
                SoreBeforeFixture.Loaded(facts, today.Rulings, day, f.Date, soreDays) is not null
            ) is
            { } near
        )
        {
            return new Refusal($"{exercise.Name} lands on the floor, and {near.Name} is too near for what is sore.")
            {
                Brief = $"{near.Name} is near, and something is sore",
            };
        }

        return
            squad.Fixtures.FirstOrDefault(f =>
                Period.DaysBetween(day, f.Date) is var days
                && ((days >= 0 && days <= quiet) || Math.Abs(days) <= topTier)
            )
                is { } fixture
            ? Refusal.Of($"{exercise.Said} is too hard this near to {fixture.Name}.") with
            {
                Brief = $"{fixture.Name} is near",
            }
            : null;
    }
}
