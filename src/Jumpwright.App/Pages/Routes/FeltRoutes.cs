using System.Globalization;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Wording;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Pages.Routes;

/// <summary>How an athlete feels, asked and written down: a 0 says that somebody asked.</summary>
internal static class FeltRoutes
{
    public static void Map(WebApplication app, FrontDesk desk) =>
        app.MapPost(
            "/athletes/{id}/felt",
            async (string id, HttpRequest request, CancellationToken cancel) =>
                Write(desk, id, await request.ReadFormAsync(cancel))
        );

    private static IResult Write(FrontDesk desk, string id, IFormCollection form)
    {
        if (desk.Book.Find(id) is null)
        {
            return Answers.NotFound(desk.Book);
        }

        string site = PlaceWords.Read(form["site"].ToString());
        string when = form["when"].ToString();
        if (
            !double.TryParse(form["score"], NumberStyles.Float, CultureInfo.InvariantCulture, out double score)
            || score is not (>= 0 and <= 10)
            || site.Length > 60
            || (site.Length == 0 && score > 0)
            || !(
                when is "rest" or "night" or "during" or "after" or "next-morning"
                || (when.Length == 0 && score is 0 && site.Length == 0)
            )
        )
        {
            return Answers.Refused(TextBook.T["felt.say"], StatusCodes.Status409Conflict, Speech.Now.Language);
        }

        desk.Write(
            JournalWord.Now(
                EntryKinds.Pain,
                id,
                // The day it is said for; no session is called by a day alone.
                Dates.Iso(desk.Book.Day),
                "athlete page",
                new PainEntry(
                    score,
                    // A 0 of rest answers no pain; one of no time would answer some.
                    when.Length == 0
                        ? "rest"
                        : when,
                    null,
                    site.Length == 0 ? PainEntry.PlaceNotSaid : site.ToLowerInvariant(),
                    form["side"].ToString() is "left" or "right" or "both" ? form["side"].ToString() : null
                )
            )
        );
        return new SeeOther(Paths.Athlete(id) + "#symptoms");
    }
}
