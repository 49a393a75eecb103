using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>
/// What the day and the week still hold for a test: contacts, hard contacts, other jumping, and what the week may ask of each tissue
/// after the one before it. What is done, planned or offered before counts as taken.
/// </summary>
internal sealed class TestRoom(History history, OpenWork open, Squad squad, LimitBook limits, LocalDate day)
{
    /// <summary>Tier of what is taken by an exercise that nobody knows: the highest.</summary>
    private const int UnknownTier = 3;

    private readonly LocalDate _monday = day.PlusDays(-((int)day.DayOfWeek - 1));

    /// <summary>Tests offered before.</summary>
    public required ImmutableArray<TestProposal> Before { get; init; }

    /// <summary>What is planned and not logged.</summary>
    public required ImmutableArray<PlannedContacts> Planned { get; init; }

    /// <summary>Null, or what it does not fit into.</summary>
    public Refusal? Holds(Exercise exercise, TestAsk ask)
    {
        int contacts = TestGate.ContactsOf(exercise, ask.Trials);
        if (contacts == 0)
        {
            return null;
        }

        int perSession = ContactCaps.PerSessionNow(history, open.Ladder.ComingBack is not null, limits, day);
        var weekly = new WeeklyDemand(
            history,
            open.Catalogue,
            squad,
            limits,
            perSession,
            ContactCaps.WeeklyGrowth(history, limits, day)
        );
        return Day(exercise, contacts, perSession)
            ?? Week(exercise, contacts, perSession, weekly)
            ?? Hard(exercise, ask, contacts)
            ?? Growth(exercise, contacts, weekly);
    }

    private int Offered => Before.Sum(t => t.Contacts);

    private Refusal? Day(Exercise exercise, int contacts, int perSession)
    {
        int most = ContactCaps.OnDay(perSession, open.Rulings);
        int today =
            history.Completed.Where(c => c.Date == day).Sum(c => c.Contacts)
            + history.PossiblyDone.Where(p => p.Date == day).Sum(p => p.Contacts)
            + Offered
            + Planned.Where(p => p.Date == day).Sum(p => p.Contacts);
        return today + contacts > most
            ? Refusal.Of(
                $"{contacts} contacts of {exercise.Said} do not fit into the day: {today} are taken or asked for, at most {most} are allowed."
            ) with
            {
                Brief = $"the day's contacts are used up",
            }
            : null;
    }

    private Refusal? Week(Exercise exercise, int contacts, int perSession, WeeklyDemand weekly)
    {
        // Any seven days that end today, which hold the calendar week so far, and what the rest of that week has planned.
        int week =
            history.Completed.Where(c => c.Date <= day && c.Date > day.PlusDays(-7)).Sum(c => c.Contacts)
            + history.PossiblyDone.Where(p => p.Date <= day && p.Date > day.PlusDays(-7)).Sum(p => p.Contacts)
            + Offered
            + Planned.Where(p => p.Date > day.PlusDays(-7) && p.Date < _monday.PlusDays(7)).Sum(p => p.Contacts);
        int perWeek = ContactCaps.PerWeek(perSession, limits);
        if (week + contacts > perWeek)
        {
            return Refusal.Of(
                $"{contacts} contacts of {exercise.Said} do not fit into the week: {week} are taken or asked for in seven days, at most {perWeek} are allowed."
            ) with
            {
                Brief = $"the week's contacts are used up",
            };
        }

        OtherJumping other = weekly.In(_monday);
        double calendar =
            weekly.AtMostDone(_monday, day.PlusDays(1), null, UnknownTier)
            + Offered
            + Planned.Where(p => p.Date >= _monday && p.Date < _monday.PlusDays(7)).Sum(p => p.Contacts);
        return weekly.ContactsBeside(other) is { } beside && calendar + contacts > beside
            ? Refusal.Of(
                $"{contacts} contacts of {exercise.Said} do not fit beside other jumping: {calendar:0} of jump training are taken or asked for in this week, at most {beside} are allowed. {other.Says}"
            ) with
            {
                Brief = $"other jumping fills the week",
            }
            : null;
    }

    private Refusal? Hard(Exercise exercise, TestAsk ask, int contacts)
    {
        if (!exercise.IsHighIntensityAt(ask.DropM))
        {
            return null;
        }

        int today =
            history
                .Completed.Where(c => c.Date == day)
                .Where(c => open.Catalogue.Find(c.ExerciseId)?.IsHighIntensityAt(c.DropHeightM) != false)
                .Sum(c => c.Contacts)
            + history
                .PossiblyDone.Where(p => p.Date == day)
                .Where(p => open.Catalogue.Find(p.ExerciseId)?.IsHighIntensityAt(p.DropHeightM) != false)
                .Sum(p => p.Contacts)
            + Before.Where(t => t.HighIntensity).Sum(t => t.Contacts)
            + Planned.Where(p => p.Date == day && p.HighIntensity).Sum(p => p.Contacts);
        int most = ContactCaps.HighIntensityPerSession(history, limits, day);
        return today + contacts > most
            ? Refusal.Of(
                $"{contacts} hard contacts of {exercise.Said} do not fit into the day: {today} are taken or asked for, at most {most} are allowed."
            ) with
            {
                Brief = $"the day's hard contacts are used up",
            }
            : null;
    }

    /// <summary>
    /// The limit on growth holds in the calendar week, with what the rest of it has planned, and in the seven days that end today, so
    /// that a Monday after a heavy week-end is no new beginning. What was only planned in weeks before allows nothing.
    /// </summary>
    private Refusal? Growth(Exercise exercise, int contacts, WeeklyDemand weekly)
    {
        foreach (
            (LocalDate first, LocalDate end) in ((LocalDate, LocalDate)[])
                [(_monday, _monday.PlusDays(7)), (day.PlusDays(-6), day.PlusDays(1))]
        )
        {
            foreach (Tissue tissue in Enum.GetValues<Tissue>())
            {
                int tier = WeeklyDemand.TierOf(exercise, tissue, UnknownTier);
                double taken =
                    weekly.AtMostDone(first, LocalDate.Min(end, day.PlusDays(1)), tissue, UnknownTier)
                    + Before.Sum(t => t.Contacts * Tier(t.ExerciseId, tissue))
                    + Planned
                        .Where(p => p.Date >= first && p.Date < end)
                        .Sum(p => p.Contacts * Tier(p.ExerciseId, tissue));
                int most = weekly.AtMost(tissue, first, _monday);
                if (tier > 0 && taken + (contacts * tier) > most)
                {
                    return Refusal.Of(
                        $"{exercise.Said} would load {TissueWords.Of(tissue)} with {taken + (contacts * tier):0} contacts × tier in seven days; after the weeks before, at most {most} are allowed."
                    ) with
                    {
                        Brief = $"the week's growth for {TissueWords.Of(tissue)} is used up",
                    };
                }
            }
        }

        return null;
    }

    private int Tier(string? exerciseId, Tissue tissue) =>
        WeeklyDemand.TierOf(exerciseId is null ? null : open.Catalogue.Find(exerciseId), tissue, UnknownTier);
}
