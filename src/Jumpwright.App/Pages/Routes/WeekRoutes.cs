using System.Globalization;
using System.Text.Json;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Wording;
using Jumpwright.Planning;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Planning asked for, watched and ended; and what was done.</summary>
internal static class WeekRoutes
{
    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet(
            "/done",
            () =>
                Answers.Page<DonePage>(
                    new
                    {
                        desk.Book,
                        desk.Journal,
                        IsOld = desk.PlanIsOld,
                    }
                )
        );
        app.MapPost(
            "/done/after",
            async (HttpRequest request, CancellationToken cancel) => After(desk, await request.ReadFormAsync(cancel))
        );
        app.MapGet(
                "/week/sessions/{id}",
                (string id, HttpRequest request) => Called(desk, id, request.Query) ?? Answers.NotFound(desk.Book)
            )
            .AddEndpointFilter(new ShelfFilter(desk));
        app.MapPost(
            "/week/plan",
            () =>
            {
                desk.StartPlanning();
                return SeeWeek();
            }
        );
        app.MapPost(
            "/week/stop",
            () =>
            {
                desk.StopPlanning();
                return SeeWeek();
            }
        );
        app.MapGet(
            "/week/state",
            () =>
                Results.Json(
                    new
                    {
                        says = desk.Planning is { } told ? SpokenSentences.Text(told.Says) : null,
                        planning = desk.Planning is not null,
                    }
                )
        );
    }

    /// <summary>Pain of the morning after, and effort and minutes: what was said is written, what was left empty is not.</summary>
    private static IResult After(FrontDesk desk, IFormCollection form)
    {
        string athlete = form["athlete"].ToString();
        string session = form["session"].ToString();
        if (desk.Book.Find(athlete) is null || session.Length is 0 or > 120)
        {
            return Answers.Told("answer.no-athlete-or-session", StatusCodes.Status404NotFound);
        }

        var entries = new List<JournalEntry>();
        void Add(string kind, object data) => entries.Add(JournalWord.Now(kind, athlete, session, "page Done", data));

        if (Number(form["pain"], 0, 10) is { } pain)
        {
            Add(EntryKinds.Pain, new PainEntry(pain, "next-morning", null, null, null));
        }

        if (Number(form["rpe"], 0, 10) is { } rpe && Number(form["minutes"], 1, 600) is { } minutes)
        {
            Add(EntryKinds.Effort, new EffortEntry(rpe, minutes));
        }

        if (entries.Count > 0)
        {
            desk.Write(entries);
        }

        return new SeeOther("/done");
    }

    private static double? Number(string? typed, double least, double most) =>
        double.TryParse(typed, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
        && value >= least
        && value <= most
            ? value
            : null;

    /// <summary>The session's page; with a roll that was called, the session as it is left by that.</summary>
    private static IResult? Called(FrontDesk desk, string id, IQueryCollection asked)
    {
        Workbook book = desk.Book;
        if (book.PlanOrNull is not { } week || week.Standing.FirstOrDefault(s => s.Slot.Id == id) is not { } session)
        {
            return null;
        }

        HashSet<string> here = [.. asked["here"].OfType<string>()];
        Dictionary<string, int> kit = week
            .Request.Kit.Where(k => int.TryParse(asked[$"kit-{k.Id}"], out _))
            .GroupBy(k => k.Id, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => Math.Max(0, int.Parse(asked[$"kit-{g.Key}"]!, CultureInfo.InvariantCulture)),
                StringComparer.Ordinal
            );
        int? minutes = int.TryParse(asked["minutes"], out int typed)
            ? Math.Clamp(typed, 1, session.Slot.Minutes)
            : null;
        bool called = asked["called"] == "yes";
        // Before anybody asked, the form holds what the floor said; afterwards what was asked.
        FloorToday said = FloorToday.Of(desk.Journal, id);
        return Answers.Page<SessionPage>(
            new
            {
                Book = book,
                Session = session,
                Called = called ? RollCall.Make(session, week.Request, here, kit, minutes) : null,
                Here = called
                    ? here
                    : session.Athletes.Select(a => a.AthleteId).Where(a => !said.Away.Contains(a)).ToHashSet(),
                Kit = called ? (IReadOnlyDictionary<string, int>)kit : said.Kit,
                Minutes = called ? minutes : said.Minutes,
                Said = said,
                desk.Amendments,
            }
        );
    }

    /// <summary>See other: a reload asks for the page again, not for another plan.</summary>
    private static IResult SeeWeek() => new SeeOther("/week");
}
