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
        app.MapGet("/set-up", () => Page(desk));
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
                UnitSystem typedIn = TypedAmount.UnitsOf(form[TypedAmount.Field]);
                cells["body_mass_kg"] = TypedAmount.In(cells["body_mass_kg"], "kg", typedIn, UnitSystem.Metric);
                cells["stature_m"] = TypedAmount.In(cells["stature_m"], "m", typedIn, UnitSystem.Metric);
                if (Fault(cells, form["operated"].ToString()) is var (field, sentence))
                {
                    return Page(desk, new FormFault("athlete", field, new Piece(sentence), form));
                }

                if (Namesakes(desk.Book, cells["name"]) is { Length: > 0 } there)
                {
                    return Page(
                        desk,
                        new FormFault("athlete", "name", new Piece(T["set-up.name.there", cells["name"], there]), form)
                    );
                }

                return Change(
                    desk,
                    folder =>
                        SquadWriter.AddAthlete(folder, cells).Then<string>(id => T["set-up.added", cells["name"], id]),
                    refusal => new FormFault("athlete", "name", refusal, form),
                    cancel
                );
            }
        );
        app.MapPost(
            "/set-up/window",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                FormFault Wrong(string field) => new("window", field, new Piece(T["set-up.window.wrong"]), form);
                if (
                    !Enum.TryParse(form["day"], out IsoDayOfWeek day)
                    || day is < IsoDayOfWeek.Monday or > IsoDayOfWeek.Sunday
                )
                {
                    return Page(desk, Wrong("day"));
                }

                if (
                    LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(form["start"].ToString())
                    is not { Success: true } start
                )
                {
                    return Page(desk, Wrong("start"));
                }

                if (!int.TryParse(form["minutes"], NumberStyles.None, CultureInfo.InvariantCulture, out int minutes))
                {
                    return Page(desk, Wrong("minutes"));
                }

                return Change(
                    desk,
                    folder =>
                        SquadWriter
                            .AddWindow(folder, day, start.Value, minutes)
                            .Then<string>(_ => T["set-up.window.added", T[$"day.{(int)day}"], form["start"]]),
                    refusal => new FormFault("window", "minutes", refusal, form),
                    cancel
                );
            }
        );
        app.MapPost(
            "/set-up/kit",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                return Change(
                    desk,
                    folder => Kit(folder, form, desk.Book.Material.Squad.Kit),
                    refusal => new FormFault("kit", KitIds.All[0], refusal, form),
                    cancel
                );
            }
        );
    }

    /// <summary>
    /// The first cell that can't stand so, and why; null where all can. What the tables would take for unknown is asked again here,
    /// where somebody is there to answer. A decimal comma becomes a point, a place its word of the files.
    /// </summary>
    private static (string Field, string Sentence)? Fault(Dictionary<string, string> cells, string operated)
    {
        cells["body_mass_kg"] = cells["body_mass_kg"].Replace(',', '.');
        cells["stature_m"] = cells["stature_m"].Replace(',', '.');
        cells["operation_site"] = PlaceWords.Read(cells["operation_site"]);
        bool written = cells["operation_site"].Length > 0;
        return !IsBirthday(cells["birth_date"]) ? ("born", T["set-up.born.wrong"])
            : !IsWithin(cells["body_mass_kg"], 15, 300) ? ("mass", ReadersUnits.In(T["set-up.mass.wrong"]))
            : !IsWithin(cells["stature_m"], 0.8, 2.6) ? ("stature", ReadersUnits.In(T["set-up.stature.wrong"]))
            // Nobody knows what was not asked: an operation closes, so neither yes nor no is taken for granted.
            : operated is not ("yes" or "no") ? ("ever", T["set-up.ever.missing"])
            : operated == "yes" && !written ? ("site", T["set-up.ever.where"])
            : operated == "no" && written ? ("site", T["set-up.ever.both"])
            : !IsDay(cells["operation_date"]) ? ("operated", T["set-up.operated.wrong"])
            : null;
    }

    /// <summary>
    /// Who is called so already, with what tells them apart; empty where nobody is. Two of one name on card and floor would be mistaken for
    /// each other, so the second one's name needs a mark.
    /// </summary>
    private static string Namesakes(Workbook book, string name)
    {
        static string Plain(string name) =>
            string.Join(' ', name.Normalize().Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return string.Join(
            "; ",
            book.Leaves.Select(l => l.Athlete)
                .Where(a => string.Equals(Plain(a.Name), Plain(name), StringComparison.OrdinalIgnoreCase))
                .Select(a => a.BirthDate is { } born ? T["set-up.name.born", a.Id, Dates.Short(born)] : a.Id)
        );
    }

    private static bool IsDay(string cell) => cell.Length == 0 || LocalDatePattern.Iso.Parse(cell).Success;

    /// <summary>Empty, or a day on which somebody who trains here can have been born.</summary>
    private static bool IsBirthday(string cell) =>
        cell.Length == 0
        || (
            LocalDatePattern.Iso.Parse(cell).TryGetValue(default, out LocalDate day)
            && day.Year >= 1900
            && day < SystemClock.Instance.GetCurrentInstant().InUtc().Date
        );

    private static bool IsWithin(string cell, double least, double most) =>
        cell.Length == 0
        || (
            double.TryParse(cell, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
            && value >= least
            && value <= most
        );

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

    private static IResult Change(
        FrontDesk desk,
        Func<string, Outcome<string>> write,
        Func<Piece, FormFault> wrong,
        CancellationToken cancel
    )
    {
        (Piece? says, FormFault? fault) = desk.Change<(Piece?, FormFault?)>(squad =>
            squad.Folder is not { } folder ? (null, wrong(new Piece(T["set-up.no-folder"])))
            : !write(folder).TryGet(out string? said, out Refusal? refusal)
                ? (null, wrong(SpokenSentences.Of(refusal.Said)))
            : squad.ImportAgain(null, cancel).TryGet(out _, out Refusal? why) ? (new Piece(said), null)
            : (SpokenSentences.Of(why.Said), null)
        );
        return Page(desk, fault, says);
    }

    private static IResult Page(FrontDesk desk, FormFault? fault = null, Piece? says = null) =>
        Answers.Page<SetUpPage>(
            new
            {
                desk.Book,
                Says = says,
                Fault = fault,
            }
        );
}
