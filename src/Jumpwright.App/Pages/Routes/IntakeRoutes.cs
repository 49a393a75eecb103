using Jumpwright.App.Desk;
using Jumpwright.App.Intake;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Recordings taken in through the pages, their labels mended, an intake taken back.</summary>
internal static class IntakeRoutes
{
    /// <summary>No recording of a jump is longer: an hour of two plates at 2000 Hz.</summary>
    public const long MostBytes = 256L * 1024 * 1024;

    /// <summary>The labels that are lengths and masses.</summary>
    private static readonly (string Cell, string Unit)[] Amounts =
    [
        ("body_mass_kg", "kg"),
        ("external_load_kg", "kg"),
        ("drop_height_m", "m"),
    ];

    public static void Map(WebApplication app, FrontDesk desk)
    {
        var incoming = new Incoming(desk);
        app.MapGet("/import", (string? done) => Page(desk, done, null));
        app.MapPost(
            "/import/{intake}/file",
            async (string intake, string? name, HttpRequest request, CancellationToken cancel) =>
            {
                if (request.ContentLength > MostBytes)
                {
                    return Answers.Refused(
                        T["import.too-big"],
                        StatusCodes.Status413PayloadTooLarge,
                        Speech.Now.Language
                    );
                }

                Outcome<string> kept = await incoming.Keep(intake, name ?? "", request.Body, cancel);
                return kept.TryGet(out string? under, out Refusal? refusal)
                    ? Results.Json(new { kept = under })
                    : Answers.Refused(refusal);
            }
        );
        app.MapPost(
            "/import/{intake}/finish",
            (string intake, CancellationToken cancel) =>
                incoming.Finish(intake, "import page", cancel).TryGet(out IntakeEntry? entry, out Refusal? refusal)
                    ? Results.Json(new { taken = entry.Files.Length })
                    : Answers.Refused(refusal)
        );
        app.MapGet(
            "/import/{intake}/state",
            (string intake) =>
                incoming.Progress.TryGetValue(intake, out ImportProgress now)
                    ? Results.Json(new { done = now.Done, total = now.Total })
                    : Results.Json(new { done = 0, total = 0 })
        );
        app.MapPost(
            "/import/undo",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                return incoming
                    .Undo(form["intake"].ToString(), "import page", cancel)
                    .TryGet(out _, out Refusal? refusal)
                    ? new SeeOther("/import")
                    : Page(desk, null, [SpokenSentences.Of(RecalledSentences.Of(refusal.Sentence))]);
            }
        );
        app.MapPost(
            "/import/labels-of-all",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                Dictionary<string, string> cells = new[] { "athlete", "date", "task" }
                    .Where(c => form[c].ToString().Trim() is { Length: > 0 and <= 200 })
                    .ToDictionary(c => c, c => form[c].ToString().Trim(), StringComparer.Ordinal);
                return Page(
                    desk,
                    null,
                    incoming
                        .LabelAll(
                            form["intake"].ToString(),
                            form["some"] == "yes"
                                ? form["file"].OfType<string>().ToHashSet(StringComparer.Ordinal)
                                : null,
                            cells,
                            cancel
                        )
                        .TryGet(out int written, out Refusal? refusal)
                        ? [new(Counted("import.labelled", written))]
                        : [SpokenSentences.Of(RecalledSentences.Of(refusal.Sentence))]
                );
            }
        );
        app.MapPost(
            "/import/labels",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                Dictionary<string, string> cells = ManifestEditor.Columns.ToDictionary(
                    c => c,
                    c => form[c].ToString().Trim() is { Length: <= 200 } cell ? cell : "",
                    StringComparer.Ordinal
                );
                UnitSystem typedIn = TypedAmount.UnitsOf(form[TypedAmount.Field]);
                foreach ((string cell, string unit) in Amounts)
                {
                    cells[cell] = TypedAmount.In(cells[cell], unit, typedIn, UnitSystem.Metric).Replace(',', '.');
                }

                return incoming
                    .Label(form["file"].ToString(), cells, cancel)
                    .TryGet(out StoredRecording? now, out Refusal? why)
                    ? Page(
                        desk,
                        null,
                        now.Refusal is { } refusal
                            ?
                            [
                                new(T["import.mended.refused", now.File] + " "),
                                SpokenSentences.Of(RecalledSentences.Of(refusal.Sentence)),
                            ]
                            :
                            [
                                new(
                                    T[
                                        now.TrialCount == 1 ? "import.mended.one" : "import.mended.many",
                                        now.File,
                                        now.TrialCount
                                    ]
                                ),
                            ]
                    )
                    : Page(desk, null, [SpokenSentences.Of(RecalledSentences.Of(why.Sentence))]);
            }
        );
    }

    private static IResult Page(FrontDesk desk, string? done, Piece[]? says) =>
        Answers.Page<ImportPage>(
            new
            {
                desk.Book,
                desk.Opened.Recordings,
                desk.Opened.Unclear,
                Intakes = Incoming.All(desk.Journal).Take(20).ToArray(),
                HasFolder = desk.Opened.Folder is not null,
                Just = done,
                Says = says,
            }
        );
}
