using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;
using NodaTime;
using NodaTime.Text;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Pages.Routes;

/// <summary>
/// What a person asks of the plan: lock, move, take out, miss. A lock on what stands there is written at once; everything else
/// is worked out first, shown beside the plan, and counts when it is taken.
/// </summary>
internal static class AmendmentRoutes
{
    private const string Who = "week page";
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapPost(
            "/week/lock",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                if (Item(desk.Book, form) is not var (leaf, session, exercise))
                {
                    return Unknown();
                }

                int sets = SetsOf(session, leaf.Athlete.Id, exercise.Id);
                bool holds = form["holds"] == "yes";
                if (holds && sets == 0)
                {
                    return Answers.Told("answer.not-planned", StatusCodes.Status409Conflict);
                }

                desk.Write(
                    Entry(EntryKinds.Lock, leaf.Athlete.Id, session.Slot.Id, new LockEntry(exercise.Id, sets, holds))
                );
                return new SeeOther(Paths.Why(session.Slot.Id, leaf.Athlete.Id));
            }
        );
        app.MapPost(
            "/week/try",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                if (Asked(desk, form) is not { } asked)
                {
                    return Unknown();
                }

                if (!asked.TryGet(out (string Asks, ImmutableArray<JournalEntry> Entries) what, out Refusal? refusal))
                {
                    return Answers.Refused(refusal);
                }

                desk.StartTrying(what.Asks, what.Entries);
                return new SeeOther("/week");
            }
        );
        app.MapPost(
            "/week/take",
            () => desk.TakeProposal() is { } why ? Answers.Refused(why) : (IResult)new SeeOther("/week")
        );
        app.MapPost(
            "/week/leave",
            () =>
            {
                desk.DropProposal();
                return new SeeOther("/week");
            }
        );
    }

    private static Outcome<(string Asks, ImmutableArray<JournalEntry> Entries)>? Asked(
        FrontDesk desk,
        IFormCollection form
    )
    {
        Workbook book = desk.Book;
        string what = form["what"].ToString();
        if (SessionOf(book, form["session"].ToString()) is not { } session)
        {
            return null;
        }

        if (what == "move-session")
        {
            return MoveSession(book, session, form);
        }

        if (book.Find(form["athlete"].ToString()) is not { } leaf)
        {
            return null;
        }

        string id = leaf.Athlete.Id;
        string name = leaf.Athlete.Name;
        string day = Dates.InWeek(session.Slot.Date);
        if (what is "misses" or "comes")
        {
            return (
                T[what == "misses" ? "ask.misses" : "ask.comes", name, day],
                [Entry(EntryKinds.TakenOut, id, session.Slot.Id, new TakenOutEntry(null, what == "misses"))]
            );
        }

        if (book.Catalogue.Find(form["exercise"].ToString()) is not { } exercise)
        {
            return null;
        }

        if (what is "there" && book.OpenOn(leaf, session.Slot.Date).Of(exercise).First is { } closed)
        {
            // What is closed is no question of room: nobody waits for a search to hear why.
            return Refusal.Of($"Not open to {name} on {session.Slot.Date}: {exercise.SaidId:small}. {closed.Because}");
        }

        int sets = SetsOf(session, id, exercise.Id);
        JournalEntry gone = Entry(EntryKinds.TakenOut, id, session.Slot.Id, new TakenOutEntry(exercise.Id, true));
        switch (what)
        {
            case "out":
                return (T["ask.out", name, exercise.Name, day], [gone]);
            case "again":
                return (
                    T["ask.again", exercise.Name, name, day],
                    [Entry(EntryKinds.TakenOut, id, session.Slot.Id, new TakenOutEntry(exercise.Id, false))]
                );
            case "there":
                int wanted =
                    int.TryParse(form["sets"], NumberStyles.None, CultureInfo.InvariantCulture, out int typed)
                    && typed is >= 1 and <= 20
                        ? typed
                        : 1;
                return (
                    wanted == 1
                        ? T["ask.there.one", name, exercise.Name, day]
                        : T["ask.there.many", name, exercise.Name, day, wanted],
                    [Entry(EntryKinds.Lock, id, session.Slot.Id, new LockEntry(exercise.Id, wanted, true))]
                );
            case "move" when SessionOf(book, form["to"].ToString()) is { } to && sets > 0:
                return (
                    T["ask.move", name, exercise.Name, Dates.InWeek(to.Slot.Date), day],
                    [gone, Entry(EntryKinds.Lock, id, to.Slot.Id, new LockEntry(exercise.Id, sets, true))]
                );
            default:
                return null;
        }
    }

    private static Outcome<(string Asks, ImmutableArray<JournalEntry> Entries)> MoveSession(
        Workbook book,
        PlannedSession session,
        IFormCollection form
    )
    {
        if (
            LocalDatePattern.Iso.Parse(form["date"].ToString()) is not { Success: true } date
            || Clock.Parse(form["start"].ToString()) is not { Success: true } start
        )
        {
            return Refusal.Of($"Write the new day and the new start.");
        }

        if (date.Value < book.Day)
        {
            return Refusal.Of($"{Dates.Long(date.Value)} is before the day the plan is seen from.");
        }

        return (
            T[
                "ask.move-session",
                Dates.InWeek(session.Slot.Date),
                Dates.At(session.Slot.Start),
                Dates.InWeek(date.Value),
                Dates.At(start.Value)
            ],
            [
                Entry(
                    EntryKinds.Moved,
                    null,
                    session.Slot.Id,
                    new MovedEntry(Dates.Iso(date.Value), Dates.At(start.Value))
                ),
            ]
        );
    }

    private static (AthleteLeaf Leaf, PlannedSession Session, Exercise Exercise)? Item(
        Workbook book,
        IFormCollection form
    ) =>
        book.Find(form["athlete"].ToString()) is { } leaf
        && SessionOf(book, form["session"].ToString()) is { } session
        && book.Catalogue.Find(form["exercise"].ToString()) is { } exercise
            ? (leaf, session, exercise)
            : null;

    private static PlannedSession? SessionOf(Workbook book, string id) =>
        book.PlanOrNull?.Plan.Sessions.FirstOrDefault(s => s.Slot.Id == id);

    private static int SetsOf(PlannedSession session, string athleteId, string exerciseId) =>
        session
            .Athletes.FirstOrDefault(a => a.AthleteId == athleteId)
            ?.Items.Where(i => i.Dose.ExerciseId == exerciseId)
            .Sum(i => i.Sets)
        ?? 0;

    private static JournalEntry Entry(string kind, string? athlete, string session, object data) =>
        JournalWord.Now(kind, athlete, session, Who, data);

    private static IResult Unknown() => Answers.Told("answer.no-item", StatusCodes.Status404NotFound);
}
