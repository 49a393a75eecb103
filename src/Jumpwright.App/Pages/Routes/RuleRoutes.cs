using System.Globalization;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Folders.Calendars;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Pages.Routes;

/// <summary>
/// Kit, calendars and limits, edited in the pages and written into the squad folder, which is then taken in again. A limit that
/// the rules would not let hold is not written: its keeper hears why at once.
/// </summary>
internal static class RuleRoutes
{
    private static readonly Dictionary<string, string[]> Fields = new(StringComparer.Ordinal)
    {
        ["kit"] = ["id", "count"],
        ["windows"] = ["day", "start", "minutes", "surface"],
        ["practices"] = ["day", "start", "minutes", "sport"],
        ["fixtures"] = ["date", "start", "name"],
    };

    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet("/settings/rules", () => Page(desk, null));
        app.MapPost(
            "/settings/rules/in",
            (HttpRequest request, CancellationToken cancel) => Asked(desk, request, In, cancel)
        );
        app.MapPost(
            "/settings/rules/out",
            (HttpRequest request, CancellationToken cancel) => Asked(desk, request, Out, cancel)
        );
        app.MapPost(
            "/settings/rules/limit",
            (HttpRequest request, CancellationToken cancel) => Asked(desk, request, SetLimit, cancel)
        );
        app.MapPost(
            "/settings/rules/drop",
            (HttpRequest request, CancellationToken cancel) => Asked(desk, request, Drop, cancel)
        );
    }

    private delegate Outcome<bool> Edit(Workbook book, string folder, Func<string, string> field);

    private static async Task<IResult> Asked(FrontDesk desk, HttpRequest request, Edit edit, CancellationToken cancel)
    {
        IFormCollection form = await request.ReadFormAsync(cancel);
        Piece said = desk.Change(squad =>
            squad.Folder is not { } folder ? new Piece(TextBook.T["rules.no-folder"])
            : edit(desk.Book, folder, name => form[name].ToString().Trim())
                .Then(_ => squad.ImportAgain(null, cancel))
                .TryGet(out _, out Refusal? refusal)
                ? new Piece(TextBook.T["rules.kept"])
            : SpokenSentences.Of(refusal.Said)
        );
        return Page(desk, said);
    }

    private static Outcome<bool> In(Workbook book, string folder, Func<string, string> field)
    {
        string section = field("section");
        if (!Fields.TryGetValue(section, out string[]? names))
        {
            return Refusal.Of($"There is no such list.");
        }

        (string Name, string Value)[] cells = [.. names.Select(n => (n, field(n)))];
        if (cells.FirstOrDefault(c => c.Value.Length > 80) is { Name: { } tooLong })
        {
            return Refusal.Of($"{tooLong} is too long: 80 letters at most.");
        }

        return SquadFolderEditor
            .SquadYaml(folder)
            .Then(text =>
                section == "kit"
                    ? SquadYamlEditor.WithKit(text, field("id"), field("count"))
                    : SquadYamlEditor.With(text, section, cells)
            )
            .Then(text => SquadFolderEditor.Keep(folder, text));
    }

    private static Outcome<bool> Out(Workbook book, string folder, Func<string, string> field) =>
        SquadFolderEditor
            .SquadYaml(folder)
            .Then(text => SquadYamlEditor.Without(text, field("section"), field("entry").ReplaceLineEndings("\n")))
            .Then(text => SquadFolderEditor.Keep(folder, text));

    private static Outcome<bool> SetLimit(Workbook book, string folder, Func<string, string> field)
    {
        string? athlete = field("athlete") is { Length: > 0 } id ? id : null;
        if (athlete is not null && book.Find(athlete) is null)
        {
            return Refusal.Of($"There is no such athlete.");
        }

        if (
            !double.TryParse(Metric(field), NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            || Day(field("from")) is not { } from
            || Day(field("until")) is not { } until
            || field("who").Length > 80
            || field("reason").Length > 200
        )
        {
            return Refusal.Of($"Write a number, and both days as 2027-01-04.");
        }

        var asked = new LimitOverride(field("limit"), athlete, value, field("who"), field("reason"), from, until);
        LimitBook before = LimitBook.Standard.With(
            [.. book.Material.Squad.Overrides.Where(o => o.AthleteId == athlete)],
            from,
            from
        );
        LimitBook after = before.With([asked], from, from);
        if (after.InForce.Length == before.InForce.Length)
        {
            return Refusal.Of(
                after.Remarks.Length > before.Remarks.Length
                    ? after.Remarks[^1]
                    : Sentence.Of($"An override ends on or after the day on which it begins.")
            );
        }

        if (
            LimitBook.Standard.Find(asked.Limit).Kind != LimitKind.Preference
            && (asked.Who.Length == 0 || asked.Reason.Length == 0)
        )
        {
            return Refusal.Of($"Say by name who sets the limit, and why. Nothing was changed.");
        }

        return SquadFolderEditor.AddOverride(
            folder,
            new Dictionary<string, string>(StringComparer.Ordinal)
            {
                ["limit"] = asked.Limit,
                ["athlete"] = athlete ?? "",
                ["value"] = value.ToString("R", CultureInfo.InvariantCulture),
                ["who"] = asked.Who,
                ["reason"] = asked.Reason,
                ["from"] = Dates.Iso(from),
                ["until"] = Dates.Iso(until),
            }
        );
    }

    /// <summary>The value in the limit's own unit, metric, whatever its keeper typed it in.</summary>
    private static string Metric(Func<string, string> field) =>
        LimitBook.Standard.All.FirstOrDefault(l => l.Id == field("limit")) is { } limit
            ? TypedAmount.In(
                field("value"),
                limit.Unit,
                TypedAmount.UnitsOf(field(TypedAmount.Field)),
                UnitSystem.Metric
            )
            : field("value");

    private static Outcome<bool> Drop(Workbook book, string folder, Func<string, string> field) =>
        SquadFolderEditor.DropOverrides(
            folder,
            field("limit"),
            field("athlete") is { Length: > 0 } athlete ? athlete : null
        );

    private static LocalDate? Day(string text) =>
        LocalDatePattern.Iso.Parse(text) is { Success: true } day ? day.Value : null;

    private static IResult Page(FrontDesk desk, Piece? says) =>
        Answers.Page<RulesPage>(
            new
            {
                desk.Book,
                Yaml = desk.Opened.Folder is { } folder
                && SquadFolderEditor.SquadYaml(folder).TryGet(out string? text, out _)
                    ? text
                    : null,
                Says = says,
            }
        );
}
