using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Prescribing.Reports;

namespace Jumpwright.App.Desk;

/// <summary>Proposed tests that fit beside a planned session.</summary>
internal static class FloorTests
{
    /// <summary>
    /// Tests that are open on the session's day with everything planned for that day and the rest of the week taken already, and what was logged
    /// in the session beyond its plan: a session planned anew has none of it in its plan. Trials logged in the session are left out, so that a test
    /// that was begun is still there with its rule.
    /// </summary>
    public static ImmutableArray<(string Question, TestProposal Test)> Of(
        Workbook book,
        PlannedWeek week,
        PlannedSession session,
        string athleteId
    )
    {
        if (book.Find(athleteId) is not { } leaf)
        {
            return [];
        }

        History before = leaf.History with
        {
            Completed =
            [
                .. leaf.History.Completed.Where(c => c.Date != session.Slot.Date || c.SessionId != session.Slot.Id),
            ],
        };
        // What is planned of a session in which nothing was logged counts whole, so that what may have been done in it is in that.
        before = before with
        {
            PossiblyDone =
            [
                .. before.PossiblyDone.Where(p =>
                    before.Completed.Any(c => c.Date == p.Date && c.SessionId == p.SessionId)
                ),
            ],
        };
        ImmutableArray<PlannedContacts> planned =
        [
            .. from other in week.Plan.Sessions
            where
                other.Slot.Id == session.Slot.Id
                || !leaf.History.Completed.Any(c => c.Date == other.Slot.Date && c.SessionId == other.Slot.Id)
            from one in other.Athletes
            where one.AthleteId == athleteId
            from item in one.Items
            let exercise = book.Catalogue.Find(item.Dose.ExerciseId)
            select new PlannedContacts(
                other.Slot.Date,
                item.Contacts,
                exercise?.IsHighIntensityAt(item.Dose.DropHeightM) ?? true
            )
            {
                ExerciseId = item.Dose.ExerciseId,
            },
        ];
        ImmutableArray<PlannedContacts> beyond =
        [
            .. from done in leaf.History.Completed
            where done.Date == session.Slot.Date && done.SessionId == session.Slot.Id
            group done by done.ExerciseId into exercise
            let contacts = exercise.Sum(c => c.Contacts - c.ContactsInTests)
                - session
                    .Athletes.Where(a => a.AthleteId == athleteId)
                    .SelectMany(a => a.Items)
                    .Where(i => i.Dose.ExerciseId == exercise.Key)
                    .Sum(i => i.Contacts)
            where contacts > 0
            select new PlannedContacts(
                session.Slot.Date,
                contacts,
                exercise.Any(c => book.Catalogue.Find(c.ExerciseId)?.IsHighIntensityAt(c.DropHeightM) != false)
            )
            {
                ExerciseId = exercise.Key,
            },
        ];
        return
        [
            .. Reporting
                .TestsBeside(book.Material.Squad, before, book.Catalogue, session.Slot.Date, planned.AddRange(beyond))
                .Select(o => (o.Question, Test: o.Test.TryGet(out TestProposal? test, out _) ? test : null))
                .Where(o => o.Test is not null)
                .Select(o => (o.Question, o.Test!)),
        ];
    }
}
