using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>
/// Whether a test may be offered now: the ladder has it open, no ruling forbids it at that height, every tissue it works hard has
/// recovered, its contacts fit into the day, no fixture is near, and a height goes up by a step at most. Unknown closes.
/// </summary>
public sealed class TestGate(
    History history,
    Ladder ladder,
    ImmutableArray<Ruling> rulings,
    Catalogue catalogue,
    ImmutableArray<Fixture> fixtures,
    LocalDate day
)
{
    /// <summary>Hours that an exercise nobody knows is taken to need, as the longest of the catalogue (house rule).</summary>
    private const int UnknownRecoveryHours = 72;

    private readonly LimitBook _limits = LimitBook.For(history, day);

    /// <summary>The exercise, or a sentence that says what stands against it.</summary>
    /// <param name="exerciseId">Which.</param>
    /// <param name="dropM">Height stepped from, m; null without a drop.</param>
    /// <param name="highestDropM">The highest drop measured for the athlete in the same kind of jump, m; null when none was.</param>
    /// <param name="trials">How many trials.</param>
    public Outcome<Exercise> Check(string exerciseId, double? dropM, double? highestDropM, int trials)
    {
        if (catalogue.Find(exerciseId) is not { } exercise)
        {
            return new Refusal($"The catalogue has no '{exerciseId}'.");
        }

        if (ladder.Find(exerciseId) is not { State: not RungState.Closed })
        {
            return new Refusal($"{exercise.Name} is closed on the ladder: test something below it first.");
        }

        if (exercise.DropRangeM is { } range)
        {
            if (dropM is not { } height || !range.Contains(height))
            {
                return new Refusal($"{exercise.Name} is not done from that height.");
            }

            double step = _limits["drop-step"];
            if (highestDropM is { } highest ? height > highest + step + 1e-9 : height > range.MinM + 1e-9)
            {
                return new Refusal(
                    highestDropM is { } top
                        ? $"{100 * height:0} cm is more than {100 * step:0} cm above the highest drop measured ({100 * top:0} cm)."
                        : $"No drop was measured: begin at {100 * range.MinM:0} cm."
                );
            }
        }

        ExerciseFacts facts = exercise.FactsAt(dropM);
        if (rulings.FirstOrDefault(r => r.Effect.Forbids(facts)) is { } ruling)
        {
            return new Refusal($"{exercise.Name} is not offered: {ruling.Because}");
        }

        if (NotRecovered(exercise) is { } tired)
        {
            return tired;
        }

        int contacts = trials * exercise.ContactsPerRep * (exercise.Limb == "each" ? 2 : 1);
        int today = history.Completed.Where(c => c.Date == day).Sum(c => c.Contacts);
        int most = ContactsAtMost(exercise, dropM);
        if (today + contacts > most)
        {
            return new Refusal(
                $"{contacts} contacts of {exercise.Name} do not fit into the day: {today} were taken, at most {most} are allowed."
            );
        }

        if (
            facts.HighIntensity
            && fixtures.FirstOrDefault(f =>
                Period.DaysBetween(day, f.Date) is var days
                && days >= 0
                && days <= _limits.Whole("high-intensity-days-before-fixture")
            )
                is { } fixture
        )
        {
            return new Refusal($"{exercise.Name} is too hard this near to {fixture.Name}.");
        }

        return exercise;
    }

    private Refusal? NotRecovered(Exercise exercise)
    {
        foreach (CompletedItem done in history.Completed.Where(c => c.Date <= day))
        {
            // Nobody wrote the hours: the session may have ended late, the test may start early.
            int hours = Math.Max(0, 24 * (Period.DaysBetween(done.Date, day) - 1));
            Exercise? known = catalogue.Find(done.ExerciseId);
            foreach ((Tissue tissue, int needs) in exercise.RecoveryHours)
            {
                int asks =
                    known is null ? UnknownRecoveryHours
                    : known.RecoveryHours.TryGetValue(tissue, out int h) ? h
                    : 0;
                if (needs > 0 && asks > 0 && hours < asks)
                {
                    return new Refusal(
                        $"{exercise.Name} works what {known?.Name ?? done.ExerciseId} worked on {done.Date:uuuu-MM-dd}: {asks} hours must lie between."
                    );
                }
            }
        }

        return null;
    }

    private int ContactsAtMost(Exercise exercise, double? dropM)
    {
        string level = history.Athlete.Level switch
        {
            TrainingLevel.Advanced => "advanced",
            TrainingLevel.Intermediate => "intermediate",
            _ => "beginner",
        };
        int most = _limits.Whole("contacts-per-session-" + level);
        if (exercise.IsHighIntensityAt(dropM))
        {
            most = Math.Min(most, _limits.Whole("high-intensity-contacts-" + level));
        }

        if (ladder.ComingBack is not null)
        {
            most /= 2;
        }

        return rulings
            .Select(r => r.Effect)
            .OfType<ContactsPerSessionAtMost>()
            .Select(e => e.Contacts)
            .Append(most)
            .Min();
    }
}
