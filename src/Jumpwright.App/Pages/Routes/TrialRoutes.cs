using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Stores;
using Jumpwright.Trials;
using NodaTime;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Pages.Routes;

/// <summary>The trial view: its page, its curves, and events set by hand.</summary>
internal static class TrialRoutes
{
    /// <summary>So much of a recording is shown before and after the trial, s.</summary>
    private const double AroundS = 6;

    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet(
            "/trials/{sha}/{number:int}",
            (string sha, int number) =>
                Find(desk.Book, sha, number) is { } trial
                    ? Answers.Page<TrialPage>(new { desk.Book, Shown = trial })
                    : Answers.NotFound(desk.Book)
        );
        app.MapGet(
            "/trials/{sha}/{number:int}/trace",
            (string sha, int number) =>
                Find(desk.Book, sha, number) is { } trial
                    ? Trace(desk.Book, trial)
                    : Answers.Told("answer.no-trial", StatusCodes.Status404NotFound)
        );
        app.MapPost(
            "/trials/{sha}/{number:int}/try",
            async (string sha, int number, HttpRequest request) =>
                Find(desk.Book, sha, number) is not { } trial
                    ? Answers.Told("answer.no-trial", StatusCodes.Status404NotFound)
                : await Answers.Body<Asked>(request) is { Events.IsDefault: false } asked
                    ? Try(desk.Book, trial, asked.Events)
                : Answers.Told("answer.unread", StatusCodes.Status400BadRequest)
        );
        app.MapPost(
            "/trials/{sha}/{number:int}/events",
            async (string sha, int number, HttpRequest request) =>
                Find(desk.Book, sha, number) is not { } trial
                    ? Answers.Told("answer.no-trial", StatusCodes.Status404NotFound)
                : await Answers.Body<Kept>(request) is { Events.IsDefault: false } kept ? Keep(desk, trial, kept)
                : Answers.Told("answer.unread", StatusCodes.Status400BadRequest)
        );
    }

    private static MeasuredTrial? Find(Workbook book, string sha, int number) =>
        book
            .Material.Recorded.OwnersOf(sha)
            .SelectMany(id => book.Find(id)?.History.Trials ?? [])
            .FirstOrDefault(t => t.Trial.Number == number && string.Equals(t.Sha256, sha, StringComparison.Ordinal));

    private static IResult Trace(Workbook book, MeasuredTrial trial)
    {
        if (
            book.Material.Raw(trial.Sha256) is not { } bytes
            || !Recording.From(bytes, trial.Labels).TryGet(out Recording? recording, out _)
            || recording is not ForceRecording force
        )
        {
            return Answers.Refused(T["trial.no-curve"], StatusCodes.Status404NotFound, Speech.Now.Language);
        }

        return Tracing.Of(force, trial.Trial, AroundS, AroundS).TryGet(out MotionTrace? t, out Refusal? refusal)
            ? Results.Json(
                new
                {
                    label = $"{Dates.Short(trial.Date)}, {T["trial.number", trial.Trial.Number]}",
                    start_s = t.TimeS[0],
                    rate_hz = force.RateHz,
                    weight_n = t.WeightN,
                    events = Events(trial.Trial),
                    phases = Phases(t),
                    force = Column(t.ForceN),
                    left = Column(t.LeftN),
                    right = Column(t.RightN),
                    velocity = Column(t.VelocityMS),
                    displacement = Column(t.DisplacementM),
                }
            )
            : Answers.Refused(refusal);
    }

    private static IResult Try(Workbook book, MeasuredTrial trial, ImmutableArray<CorrectionEntry.Moved> events)
    {
        var set = new CorrectionEntry(trial.Sha256, trial.Trial.Number, events, "");
        MeasuredTrial automatic = trial with { Trial = Automatic(book, trial) };
        if (
            !JournalReading
                .Again(automatic, set.ForMeasuring(), book.Material.Raw)
                .TryGet(out Trial? again, out Refusal? refusal)
        )
        {
            return Answers.Refused(refusal);
        }

        object phases =
            book.Material.Raw(trial.Sha256) is { } bytes
            && Recording.From(bytes, trial.Labels).TryGet(out Recording? recording, out _)
            && recording is ForceRecording force
            && Tracing.Of(force, again, AroundS, AroundS).TryGet(out MotionTrace? trace, out _)
                ? Phases(trace)
                : Array.Empty<object>();
        return Results.Json(
            new
            {
                measures = again.Measures.ToDictionary(m => m.Name, MeasureWords.Value, StringComparer.Ordinal),
                events = Events(again),
                phases,
            }
        );
    }

    private static IResult Keep(FrontDesk desk, MeasuredTrial trial, Kept kept)
    {
        if (
            !Guid.TryParse(kept.Id, out Guid id)
            || string.IsNullOrWhiteSpace(kept.Who)
            || string.IsNullOrWhiteSpace(kept.Why)
            || kept.Who.Length > 80
            || kept.Why.Length > 300
        )
        {
            return Answers.Refused(T["trial.say-who"], StatusCodes.Status400BadRequest, Speech.Now.Language);
        }

        var set = new CorrectionEntry(trial.Sha256, trial.Trial.Number, kept.Events, kept.Why.Trim());
        MeasuredTrial automatic = trial with { Trial = Automatic(desk.Book, trial) };
        if (
            !set.Events.IsEmpty
            && !JournalReading
                .Again(automatic, set.ForMeasuring(), desk.Book.Material.Raw)
                .TryGet(out _, out Refusal? refusal)
        )
        {
            return Answers.Refused(refusal);
        }

        desk.Write(
            new JournalEntry(
                id.ToString(),
                EntryKinds.Correction,
                trial.AthleteId,
                null,
                SystemClock.Instance.GetCurrentInstant(),
                kept.Who.Trim(),
                JsonSerializer.Serialize(set)
            )
        );
        return Results.Json(new { kept = id });
    }

    private static Trial Automatic(Workbook book, MeasuredTrial trial) =>
        book.Material.CorrectionOf(trial)?.Automatic ?? trial.Trial;

    private static Dictionary<string, double> Events(Trial trial) =>
        EventNames.Of(trial.Events).ToDictionary(e => e.Name, e => e.AtS, StringComparer.Ordinal);

    private static object[] Phases(MotionTrace trace) =>
        [
            .. trace.Phases.Select(p => new
            {
                name = TextBook.Find($"phase.{p.Name}") ?? p.Name,
                from = p.FromS,
                to = p.ToS,
            }),
        ];

    /// <summary>Little-endian 32-bit numbers in base 64: five columns of 20,000 are half a megabyte and need no parsing.</summary>
    private static string? Column(ImmutableArray<double> values)
    {
        if (values.IsEmpty)
        {
            return null;
        }

        float[] single = [.. values.Select(v => (float)v)];
        return Convert.ToBase64String(MemoryMarshal.AsBytes(single.AsSpan()));
    }

    private sealed record Asked([property: JsonPropertyName("events")] ImmutableArray<CorrectionEntry.Moved> Events);

    private sealed record Kept(
        [property: JsonPropertyName("id")] string? Id,
        [property: JsonPropertyName("who")] string? Who,
        [property: JsonPropertyName("why")] string? Why,
        [property: JsonPropertyName("events")] ImmutableArray<CorrectionEntry.Moved> Events
    );
}
