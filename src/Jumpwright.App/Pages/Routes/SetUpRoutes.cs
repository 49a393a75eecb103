using System.Globalization;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using NodaTime;
using NodaTime.Text;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Who they are, when they train, what kit there is: what a squad needs before anything is planned.</summary>
internal static class SetUpRoutes
{
    private const int Longest = 200;
    private static readonly string[] AthleteCells =
    [
        "name",
        "birth_date",
        "body_mass_kg",
        "stature_m",
        "sport",
        "level",
        "operation_site",
        "operation_side",
        "operation_date",
    ];

    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet("/set-up", () => Page(desk, null));
        app.MapPost(
            "/set-up/athlete",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                Dictionary<string, string> cells = AthleteCells.ToDictionary(
                    c => c,
                    c => form[c].ToString().Trim() is { Length: <= Longest } cell ? cell : "",
                    StringComparer.Ordinal
                );
                // Nobody knows what was not asked: an operation closes, so neither yes nor no is taken for granted.
                string operated = form["operated"].ToString();
                if (operated is not ("yes" or "no"))
                {
                    return Page(desk, new Piece(T["set-up.ever.missing"]));
                }

                bool written = cells["operation_site"].Length > 0;
                if (operated == "yes" != written)
                {
                    return Page(desk, new Piece(T[written ? "set-up.ever.both" : "set-up.ever.where"]));
                }

                return Change(
                    desk,
                    folder =>
                        SquadWriter.AddAthlete(folder, cells).Then<string>(id => T["set-up.added", cells["name"], id]),
                    cancel
                );
            }
        );
        app.MapPost(
            "/set-up/window",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                if (
                    !Enum.TryParse(form["day"], out IsoDayOfWeek day)
                    || day is < IsoDayOfWeek.Monday or > IsoDayOfWeek.Sunday
                    || LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(form["start"].ToString())
                        is not { Success: true } start
                    || !int.TryParse(form["minutes"], NumberStyles.None, CultureInfo.InvariantCulture, out int minutes)
                )
                {
                    return Page(desk, new Piece(T["set-up.window.wrong"]));
                }

                return Change(
                    desk,
                    folder =>
                        SquadWriter
                            .AddWindow(folder, day, start.Value, minutes)
                            .Then<string>(_ => T["set-up.window.added", T[$"day.{(int)day}"], form["start"]]),
                    cancel
                );
            }
        );
        app.MapPost(
            "/set-up/kit",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                return Change(desk, folder => Kit(folder, form, desk.Book.Material.Squad.Kit), cancel);
            }
        );
    }

    private static Outcome<string> Kit(
        string folder,
        IFormCollection form,
        IReadOnlyCollection<Athletes.KitCount> before
    )
    {
        foreach (string id in KitIds.All)
        {
            if (
                int.TryParse(form[id], NumberStyles.None, CultureInfo.InvariantCulture, out int count)
                && count != before.Where(k => k.Id == id).Sum(k => k.Count)
                && !SquadWriter.SetKit(folder, id, count).TryGet(out _, out Refusal? refusal)
            )
            {
                return refusal;
            }
        }

        return T["set-up.kit.written"];
    }

    private static IResult Change(FrontDesk desk, Func<string, Outcome<string>> write, CancellationToken cancel) =>
        Page(
            desk,
            desk.Change(squad =>
                squad.Folder is not { } folder ? new Piece(T["set-up.no-folder"])
                : write(folder).TryGet(out string? said, out Refusal? refusal)
                    ? squad.ImportAgain(null, cancel).TryGet(out _, out Refusal? why) ? new Piece(said)
                        : new Piece(why.Sentence, IsEnglish: true)
                : new Piece(refusal.Sentence, IsEnglish: true)
            )
        );

    private static IResult Page(FrontDesk desk, Piece? says) => Answers.Page<SetUpPage>(new { desk.Book, Says = says });
}
