using Jumpwright.App.Desk;
using Jumpwright.Paper;
using Jumpwright.Sessions;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Jumpwright.App.Pages.Routes;

/// <summary>The plain pages: squad, athlete, week, refused recordings, exercises, cards.</summary>
internal static class PageRoutes
{
    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet(
            "/",
            (string? find, string? first) =>
                new RazorComponentResult<SquadPage>(
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
        app.MapGet(
            "/week",
            () =>
                new RazorComponentResult<WeekPage>(
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
        app.MapGet("/refused", () => new RazorComponentResult<RefusedPage>(new { desk.Book }));
        app.MapGet(
            "/exercises",
            (double? mass) =>
                new RazorComponentResult<ExercisesPage>(
                    new { desk.Book, BodyMassKg = mass is >= 15 and <= 300 ? mass.Value : 70 }
                )
        );
        app.MapGet(
            "/athletes/{id}",
            (string id) =>
                desk.Book.Find(id) is { } leaf
                    ? new RazorComponentResult<AthletePage>(
                        new
                        {
                            desk.Book,
                            Leaf = leaf,
                            Pictures = desk.Pictures.Of(id, desk.Book.Day),
                            Drawn = desk.Pictures.ReportOf(leaf.Dossier, desk.Book.Day),
                        }
                    )
                    : Answers.NotFound(desk.Book)
        );
        app.MapGet(
            "/cards/{session}/{athlete}.pdf",
            (string session, string athlete, string? paper) =>
                Card(desk.Book, session, athlete) is { } card
                    ? Results.File(
                        CardPdf.Render(
                            card,
                            desk.Pictures.Of(athlete, card.Date),
                            Enum.TryParse(paper, ignoreCase: true, out CardPaper asked) && Enum.IsDefined(asked)
                                ? asked
                                : CardPaper.A5
                        ),
                        "application/pdf"
                    )
                    : Answers.NotFound(desk.Book)
        );
        app.MapGet(
            "/cards/{session}/{athlete}",
            (string session, string athlete) =>
                Card(desk.Book, session, athlete) is { } card
                    ? new RazorComponentResult<CardPage>(
                        new
                        {
                            desk.Book,
                            Card = card,
                            Pictures = desk.Pictures.Of(athlete, card.Date),
                        }
                    )
                    : Answers.NotFound(desk.Book)
        );
        app.MapGet(
            "/cards/{session}/{athlete}/why",
            (string session, string athlete, string? not) =>
                Card(desk.Book, session, athlete) is { } card
                    ? new RazorComponentResult<WhyPage>(
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
        app.MapGet(
            "/sheets/{session}.pdf",
            (string session) =>
                desk.Book.PlanOrNull?.Sheets.FirstOrDefault(s => s.SessionId == session) is { } sheet
                    ? Results.File(CoachSheetPdf.Render(sheet), "application/pdf")
                    : Answers.NotFound(desk.Book)
        );
        app.MapFallback(() => Answers.NotFound(desk.Book));
    }

    private static SessionCard? Card(Workbook book, string session, string athlete) =>
        book.PlanOrNull?.Cards.FirstOrDefault(c => c.SessionId == session && c.AthleteId == athlete);
}
