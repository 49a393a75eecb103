using System.Globalization;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Wording;
using Jumpwright.Paper;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using Microsoft.AspNetCore.Components;

namespace Jumpwright.App.Pages.Routes;

/// <summary>The plain pages: squad, athlete, week, refused recordings, exercises, cards.</summary>
internal static class PageRoutes
{
    public static void Map(WebApplication app, FrontDesk desk)
    {
        // Pages of what the desk holds: the same bytes until it holds something else.
        RouteGroupBuilder kept = app.MapGroup("").AddEndpointFilter(new ShelfFilter(desk));
        kept.MapGet(
            "/",
            (string? find, string? first) =>
                Answers.Page<SquadPage>(
                    new
                    {
                        desk.Book,
                        Find = find,
                        DecideFirst = first == "decide",
                        desk.IsLooking,
                        desk.LookTrouble,
                    }
                )
        );
        kept.MapGet(
            "/week",
            () =>
                Answers.Page<WeekPage>(
                    new
                    {
                        desk.Book,
                        desk.Planning,
                        IsOld = desk.PlanIsOld,
                        desk.Proposal,
                        desk.Amendments,
                    }
                )
        );
        kept.MapGet("/week/stations", () => OfThePlan<StationsPage>(desk.Book));
        kept.MapGet("/week/left-out", () => OfThePlan<LeftOutPage>(desk.Book));
        kept.MapGet("/week/limits", () => OfThePlan<LimitsPage>(desk.Book));
        app.MapGet("/refused", () => Answers.Page<RefusedPage>(new { desk.Book }));
        kept.MapGet(
            "/exercises",
            (string? mass, string? units) =>
                Answers.Page<ExercisesPage>(new { desk.Book, BodyMassKg = BodyMassKg(mass, units) ?? UsualMassKg() })
        );
        kept.MapGet(
            "/athletes/{id}",
            (string id) =>
                desk.Book.Find(id) is { } leaf
                    ? Answers.Page<AthletePage>(
                        new
                        {
                            desk.Book,
                            Leaf = leaf,
                            Pictures = desk.Pictures.Of(id, desk.Book.Day),
                            Drawn = desk.Pictures.ReportOf(leaf.Dossier, desk.Book.Day),
                            LacksConsent = !Consent.LetsALinkOut(leaf.Athlete, desk.Book, desk.Journal),
                        }
                    )
                    : Answers.NotFound(desk.Book)
        );
        kept.MapGet("/athletes/{id}/ladder", (string id) => OfAthlete<LadderPage>(desk.Book, id));
        kept.MapGet("/athletes/{id}/said", (string id) => OfAthlete<SaidPage>(desk.Book, id));
        kept.MapGet("/athletes/{id}/recordings", (string id) => OfAthlete<RecordingsPage>(desk.Book, id));
        kept.MapGet("/athletes/{id}/measures", (string id) => OfAthlete<MeasuresPage>(desk.Book, id));
        app.MapGet(
            "/cards/{session}/{athlete}.pdf",
            (string session, string athlete, string? paper) =>
                Card(desk.Book, session, athlete) is { } card
                    ? Results.File(
                        SpokenCards.Pdf(
                            card,
                            desk.Book.Catalogue,
                            desk.Pictures,
                            Enum.TryParse(paper, ignoreCase: true, out CardPaper asked) && Enum.IsDefined(asked)
                                ? asked
                                : CardPaper.A5
                        ),
                        "application/pdf"
                    )
                    : Answers.NotFound(desk.Book)
        );
        kept.MapGet(
            "/cards/{session}/{athlete}",
            (string session, string athlete) =>
                Card(desk.Book, session, athlete) is { } card
                    ? Answers.Page<CardPage>(
                        new
                        {
                            desk.Book,
                            Card = card,
                            Pictures = desk.Pictures.Of(athlete, card.Date),
                        }
                    )
                    : Answers.NotFound(desk.Book)
        );
        kept.MapGet(
            "/cards/{session}/{athlete}/why",
            (string session, string athlete, string? not) =>
                Card(desk.Book, session, athlete) is { } card
                    ? Answers.Page<WhyPage>(
                        new
                        {
                            desk.Book,
                            Card = card,
                            desk.Amendments,
                            Not = not is null ? null : desk.Book.Catalogue.Find(not),
                        }
                    )
                    : Answers.NotFound(desk.Book)
        );
        // A sheet is asked for again and again; cards are too many to keep.
        app.MapGet(
                "/sheets/{session}.pdf",
                (string session) =>
                    desk.Book.PlanOrNull?.Sheets.FirstOrDefault(s => s.SessionId == session) is { } sheet
                        ? new WrittenPdf(() => CoachSheetPdf.Render(sheet, SpokenSentences.Writer))
                        : Answers.NotFound(desk.Book)
            )
            .AddEndpointFilter(new ShelfFilter(desk, WrittenPage.Pdf));
        app.MapFallback(() => Answers.NotFound(desk.Book));
    }

    /// <summary>A page of what the plan holds beside its sheet; unknown while there is no plan.</summary>
    private static IResult OfThePlan<TPage>(Workbook book)
        where TPage : IComponent =>
        book.PlanOrNull is { } week ? Answers.Page<TPage>(new { Book = book, Week = week }) : Answers.NotFound(book);

    /// <summary>A page of what an athlete's own page folds away; unknown where there is no such athlete.</summary>
    private static IResult OfAthlete<TPage>(Workbook book, string id)
        where TPage : IComponent =>
        book.Find(id) is { } leaf ? Answers.Page<TPage>(new { Book = book, Leaf = leaf }) : Answers.NotFound(book);

    /// <summary>The mass that forces are asked for, kg; null where none that a body has was typed.</summary>
    private static double? BodyMassKg(string? typed, string? units) =>
        double.TryParse(
            TypedAmount.Metric(typed ?? "", "kg", TypedAmount.UnitsOf(units)),
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out double mass
        ) && mass is >= 15 and <= 300
            ? mass
            : null;

    /// <summary>Some mass to begin with, whole in the reader's units.</summary>
    private static double UsualMassKg() =>
        BodyMassKg(TypedAmount.Round("70", "kg", Speech.Now.Units), Speech.Now.Units.ToString())!.Value;

    private static SessionCard? Card(Workbook book, string session, string athlete) =>
        book.PlanOrNull?.Cards.FirstOrDefault(c => c.SessionId == session && c.AthleteId == athlete);
}
