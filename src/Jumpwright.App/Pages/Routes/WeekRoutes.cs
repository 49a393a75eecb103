using Jumpwright.App.Desk;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Planning asked for, watched and ended; and what was done.</summary>
internal static class WeekRoutes
{
    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet("/done", () => new RazorComponentResult<DonePage>(new { desk.Book, desk.Journal }));
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
            () => Results.Json(new { says = desk.Planning?.Says, planning = desk.Planning is not null })
        );
    }

    /// <summary>See other: a reload asks for the page again, not for another plan.</summary>
    private static IResult SeeWeek() => new SeeOther("/week");
}
