using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Jumpwright.App.Desk;
using Jumpwright.App.Intake;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using Jumpwright.Trials;
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
        app.MapGet("/import", (string? done, string? mend) => Page(desk, done, null, mend: mend));
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
            "/import/film",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                (CountedFrames? read, string field, string why) = CountedFrames.Of(form, desk.Book);
                if (read is null)
                {
                    return Page(desk, null, null, new FormFault("film", field, new Piece(T[why]), form));
                }

                string intake = Guid.NewGuid().ToString();
                using var bytes = new MemoryStream(Encoding.UTF8.GetBytes(read.Text));
                return
                    (await incoming.Keep(intake, read.Name, bytes, cancel)).TryGet(out _, out Refusal? refusal)
                    && incoming.Finish(intake, "import page", cancel).TryGet(out IntakeEntry? entry, out refusal)
                    ? new SeeOther($"/import?done={entry.Number}")
                    : Page(
                        desk,
                        null,
                        null,
                        new FormFault(
                            "film",
                            "film-frames",
                            SpokenSentences.Of(RecalledSentences.Of(refusal.Sentence)),
                            form
                        )
                    );
            }
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
                Dictionary<string, string> cells = new[] { "athlete", "date", "task", Incoming.FrameRate }
                    .Where(c => form[c].ToString().Trim() is { Length: > 0 and <= 200 })
                    .ToDictionary(c => c, c => form[c].ToString().Trim(), StringComparer.Ordinal);
                if ((WrongRate(cells) ?? Beyond(cells, desk)) is { } wrong)
                {
                    return Page(desk, null, [wrong]);
                }

                bool onlyTicked = form["some"] == "yes";
                if (onlyTicked && form["file"].Count == 0)
                {
                    return Page(desk, null, [new Piece(T["import.lacking.none-ticked"])]);
                }

                return Page(
                    desk,
                    null,
                    incoming
                        .LabelAll(
                            form["intake"].ToString(),
                            onlyTicked ? form["file"].OfType<string>().ToHashSet(StringComparer.Ordinal) : null,
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
                if (form.ContainsKey(Incoming.FrameRate))
                {
                    cells[Incoming.FrameRate] = form[Incoming.FrameRate].ToString().Trim();
                    if (WrongRate(cells) is { } wrong)
                    {
                        return Page(desk, null, [wrong]);
                    }
                }

                UnitSystem typedIn = TypedAmount.UnitsOf(form[TypedAmount.Field]);
                foreach ((string cell, string unit) in Amounts)
                {
                    cells[cell] = TypedAmount.Metric(cells[cell], unit, typedIn);
                }

                if (Beyond(cells, desk) is { } beyond)
                {
                    return Page(desk, null, [beyond]);
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

    /// <summary>Why a label can't stand so; null where it can.</summary>
    private static Piece? Beyond(Dictionary<string, string> cells, FrontDesk desk) =>
        LabelBounds.Wrong(cells, desk.Book.Day) is { } key ? new Piece(ReadersUnits.In(T[key])) : null;

    /// <summary>Why a camera's rate can't stand so; null where it can, or none was typed. A decimal comma is read.</summary>
    private static Piece? WrongRate(Dictionary<string, string> cells)
    {
        if (cells.GetValueOrDefault(Incoming.FrameRate, "") is not { Length: > 0 } typed)
        {
            return null;
        }

        if (CountedFrames.Rate(typed) is not { } rate)
        {
            return new Piece(T["import.rate.wrong"]);
        }

        cells[Incoming.FrameRate] = rate.ToString("R", CultureInfo.InvariantCulture);
        return null;
    }

    private static IResult Page(
        FrontDesk desk,
        string? done,
        Piece[]? says,
        FormFault? fault = null,
        string? mend = null
    ) =>
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
                Fault = fault,
                Mend = mend,
                Measured = (Func<IReadOnlyCollection<string>, ImmutableDictionary<string, ImmutableArray<Trial>>>)
                    desk.Opened.TrialsIn,
            }
        );
}
