using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Jumpwright.App.Contracts;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Planning;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Sessions;
using Jumpwright.Storage.Stores;
using NodaTime;
using NodaTime.Text;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Pages.Routes;

/// <summary>
/// The floor view: static files that open without the program, the day's session as they keep it, and the log they hand in. An
/// entry's id is made on the tablet, so that one that is handed in twice is kept once.
/// </summary>
internal static class FloorRoutes
{
    private const int MostEntries = 500;
    private const int MostBytes = 1024 * 1024;

    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet(
            "/floor/",
            (HttpContext context) =>
                context.Request.Path.Value!.EndsWith('/')
                    ? FloorShell.Of(context, "floor.html")
                    : Results.Redirect("/floor/")
        );
        app.MapGet("/floor/floor.js", (HttpContext context) => AssetRoutes.Of(context, "floor.js"));
        app.MapGet("/floor/words.js", (HttpContext context) => FloorShell.Of(context, "words.js"));
        app.MapGet("/floor/app.webmanifest", (HttpContext context) => FloorShell.Of(context, "floor.webmanifest"));
        app.MapGet("/floor/sw.js", (HttpContext context) => FloorShell.Of(context, "floor-worker.js"));
        app.MapGet("/floor/sessions", () => Results.Json(Sessions(desk.Book)));
        // As tablets keep it, from the shelf while the desk holds the same: which tests fit beside it takes long to work out.
        app.MapGet("/floor/sessions/{id}", (string id) => Session(desk.Book, id))
            .AddEndpointFilter(new ShelfFilter(desk, WrittenPage.Json));
        app.MapGet(
            "/floor/sessions/{id}/log",
            (string id) =>
                Results.Json(
                    new
                    {
                        entries = desk
                            .Journal.Where(e => e.SessionId == id && EntryKinds.OfTheFloor.Contains(e.Kind))
                            .Select(Handed.Of)
                            .ToArray(),
                    }
                )
        );
        app.MapPost(
            "/floor/log",
            async (HttpRequest request) =>
                await Answers.Body<Handing>(request, MostBytes)
                    is { Entries: { IsDefault: false, Length: <= MostEntries } entries }
                    ? Take(desk, entries)
                    : Answers.Told("answer.unread", StatusCodes.Status400BadRequest)
        );
    }

    private static object Sessions(Workbook book)
    {
        ImmutableArray<PlannedSession> planned = book.PlanOrNull?.Standing ?? [];
        return new
        {
            next = planned.FirstOrDefault(s => s.Slot.Date >= book.Day)?.Slot.Id,
            sessions = planned.Select(s => new { id = s.Slot.Id, title = Title(s) }).ToArray(),
        };
    }

    private static string Title(PlannedSession session) =>
        Unbroken.In($"{Dates.Long(session.Slot.Date)}, {Dates.At(session.Slot.Start)}");

    private static IResult Session(Workbook book, string id) =>
        book.PlanOrNull is { } week && week.Standing.FirstOrDefault(s => s.Slot.Id == id) is { } session
            ? new WrittenJson(() => Session(book, week, session))
            : Answers.Told("answer.no-session", StatusCodes.Status404NotFound);

    private static object Session(Workbook book, PlannedWeek week, PlannedSession session)
    {
        string id = session.Slot.Id;
        ILookup<string, FloorNeeds> needs = FloorNeeds
            .OfAll(session, week.Request)
            .ToLookup(n => n.AthleteId, n => n.Needs, StringComparer.Ordinal);
        return new
        {
            id,
            squad = book.Material.Squad.Name,
            seen = SeenWords.Of(book),
            title = Title(session),
            minutes = session.Slot.Minutes,
            fresh_until = FloorNeeds.FreshUntil(session.Slot, week.Request),
            zone = book.Material.Squad.TimeZone,
            change_over = week.Request.Limits.ChangeOverMinutes,
            kit = Kit(week, session),
            and = T["station.and"],
            stop_above = CardQuestions.StopAbove.Value,
            stop_at_once = week.Cards.Where(c => c.SessionId == id).Select(c => Said(c.StopAtOnce)).FirstOrDefault()
                ?? "",
            rotation = session
                .Rotation.Select(r => new
                {
                    station = r.Station,
                    place = ItemWords.Station(r.Station),
                    exercise = r.ExerciseId,
                    name = SpokenExercises.Name(book.Catalogue, r.ExerciseId),
                    lang = SpokenExercises.Language(book.Catalogue, r.ExerciseId),
                    start = r.StartMin,
                    end = r.EndMin,
                    athletes = r.AthleteIds,
                })
                .ToArray(),
            places = PlaceWords
                .Usual.Select(p => Place(new SorePlace(p, Side.Unknown, SorePlaces.MayBeBone(p))))
                .ToArray(),
            athletes = week
                .Cards.Where(c => c.SessionId == id)
                .Select(card => new
                {
                    id = card.AthleteId,
                    name = card.AthleteName,
                    nothing = card.NothingInShort is { } nothing ? SpokenSentences.Text(nothing) : null,
                    stop_above = card.PainStopsAbove,
                    sore = Sore(book, card.AthleteId, session.Slot.Date),
                    done = Done(book, card.AthleteId, session.Slot),
                    card = (string?)Paths.Card(id, card.AthleteId),
                    items = Items(book.Catalogue, session, card, needs[card.AthleteId]),
                    tests = Tests(book, week, session, card.AthleteId),
                })
                .Concat(
                    // Whoever came into the squad after the plan was made stands in the roll too.
                    book.Leaves.Where(l => !week.Cards.Any(c => c.SessionId == id && c.AthleteId == l.Athlete.Id))
                        .Select(l => new
                        {
                            id = l.Athlete.Id,
                            name = l.Athlete.Name,
                            nothing = (string?)T["floor.not-planned"],
                            stop_above = CardQuestions.StopAbove.Value,
                            sore = Array.Empty<object>(),
                            done = Array.Empty<object>(),
                            card = (string?)null,
                            items = Array.Empty<object>(),
                            tests = Array.Empty<object>(),
                        })
                )
                .ToArray(),
        };
    }

    /// <summary>Where it hurt lately, to choose from first when it hurts again.</summary>
    private static object[] Sore(Workbook book, string athlete, LocalDate day) =>
        [
            .. (book.Find(athlete) is { } leaf ? SorePlaces.Of(book.Material.Squad.Under(leaf.Dossier.Bare), day) : [])
                .Where(p => p.Site.Length > 0 && p.Site != PainEntry.PlaceNotSaid)
                .Select(Place),
        ];

    private static object Place(SorePlace place) =>
        new
        {
            site = place.Site,
            side = Sides.Word(place.Side),
            name = SpokenSentences.Text(place.Said),
            bone = place.MayBeBone,
            bone_unnamed = SorePlaces.MayBeBone(place.Site),
        };

    /// <summary>The kit that the session uses, as planned, with the word for a piece of it.</summary>
    private static object[] Kit(PlannedWeek week, PlannedSession session)
    {
        HashSet<string> used =
        [
            .. session
                .Athletes.SelectMany(a => a.Items)
                .SelectMany(i => week.Request.Catalogue.Find(i.Dose.ExerciseId)?.Kit.Select(k => k.Id) ?? []),
        ];
        return
        [
            .. used.Order(StringComparer.Ordinal)
                .Select(k => new
                {
                    id = k,
                    place = ItemWords.Place(k),
                    count = week.Request.CountOf(k),
                }),
        ];
    }

    private static object[] Items(
        Catalogue catalogue,
        PlannedSession session,
        SessionCard card,
        IEnumerable<FloorNeeds> needs
    )
    {
        ImmutableArray<PlannedItem> items =
            session.Athletes.FirstOrDefault(a => a.AthleteId == card.AthleteId)?.Items ?? [];
        return
        [
            .. items
                .Zip(card.Items, needs)
                .Select(item => new
                {
                    exercise = item.First.Dose.ExerciseId,
                    name = SpokenExercises.OnCard(catalogue, item.Second).Name,
                    lang = SpokenExercises.OnCard(catalogue, item.Second).Language,
                    sets = item.First.Sets,
                    reps = item.First.Dose.Reps,
                    contacts_per_set = item.First.Dose.Contacts(1),
                    drop_height_m = item.First.Dose.DropHeightM,
                    dose = Said(SpokenExercises.Dose(item.Second)),
                    rest_s = item.First.Dose.RestBetweenSetsS,
                    rest = Said(item.Second.Rest),
                    stop_when = Said(item.Second.StopWhen),
                    own_stop = SpokenExercises.OnCard(catalogue, item.Second).Stop,
                    if_sore = Said(item.Second.InsteadIfSore),
                    stop = StopJson.Of(item.First.Dose.Stop),
                    needs = Needs(item.Third),
                }),
        ];
    }

    /// <summary>Names of what was logged in it, so that a tablet can say what was done of a session that was planned anew since.</summary>
    private static object[] Done(Workbook book, string athlete, SessionSlot slot) =>
        [
            .. (book.Find(athlete)?.Dossier.Bare.Completed ?? [])
                .Where(c => Logs.IsOf(c, slot))
                .DistinctBy(c => c.ExerciseId)
                .Select(c => new
                {
                    exercise = c.ExerciseId,
                    name = SpokenExercises.Name(book.Catalogue, c.ExerciseId),
                    lang = SpokenExercises.Language(book.Catalogue, c.ExerciseId),
                }),
        ];

    /// <summary>A sentence in the language of the page, which the script marks.</summary>
    private static object Said(Sentence sentence)
    {
        (string text, bool isEnglish) = SpokenSentences.Of(sentence);
        return new { en = Unbroken.In(text), lang = isEnglish ? "en" : Speech.Now.Language };
    }

    /// <summary>What the rule of roll call asks of an item, as the tablet's script reads it.</summary>
    internal static object Needs(FloorNeeds needs) =>
        new
        {
            low = needs.IsLow,
            needs_low = needs.NeedsLow,
            only_with = needs.OnlyWith,
            fresh = needs.IsFresh,
            kit = needs.Kit.Select(k => new { id = k.Id, count = k.Count }),
        };

    /// <summary>Tests that may be done beside the session, each with its stop rule, which the tablet holds against the trials by itself.</summary>
    private static object[] Tests(Workbook book, PlannedWeek week, PlannedSession session, string athlete) =>
        [
            .. FloorTests
                .Of(book, week, session, athlete)
                .Select(o =>
                {
                    Exercise exercise = book.Catalogue.Find(o.Test.ExerciseId)!;
                    return new
                    {
                        question = o.Question,
                        exercise = o.Test.ExerciseId,
                        name = SpokenExercises.Of(exercise).Name,
                        lang = SpokenExercises.Of(exercise).Language,
                        why = Said(o.Test.Because),
                        trials = o.Test.Ask.Trials,
                        contacts_per_trial = o.Test.Contacts / o.Test.Ask.Trials,
                        drop_height_m = o.Test.Ask.DropM,
                        stop = TestStopJson.Of(o.Test.Stop),
                    };
                }),
        ];

    private static IResult Take(FrontDesk desk, ImmutableArray<Handed> handed)
    {
        var good = new List<JournalEntry>();
        var refused = new List<object>();
        Workbook book = desk.Book;
        foreach (Handed entry in handed)
        {
            if (entry.Entry(book) is { } fine && fine.TryGet(out JournalEntry? read, out Quantities.Refusal? why))
            {
                good.Add(read);
            }
            else
            {
                refused.Add(new { id = entry.Id ?? "", why = SpokenSentences.Text(why!.Said).TrimEnd('.') });
            }
        }

        JournalReceipt receipt = desk.Write(good);
        return Results.Json(
            new
            {
                added = receipt.Added,
                known = receipt.Known,
                different = receipt.Different,
                refused,
            }
        );
    }

    private sealed record Handing([property: JsonPropertyName("entries")] ImmutableArray<Handed> Entries);

    /// <summary>An entry as tablets write it.</summary>
    private sealed record Handed(
        [property: JsonPropertyName("id")] string? Id,
        [property: JsonPropertyName("kind")] string? Kind,
        [property: JsonPropertyName("athlete")] string? Athlete,
        [property: JsonPropertyName("session")] string? Session,
        [property: JsonPropertyName("made_at")] string? MadeAt,
        [property: JsonPropertyName("who")] string? Who,
        [property: JsonPropertyName("data")] JsonElement Data
    )
    {
        private const int Longest = 120;

        public static Handed Of(JournalEntry entry)
        {
            using JsonDocument data = JsonDocument.Parse(entry.Json);
            return new Handed(
                entry.Id,
                entry.Kind,
                entry.AthleteId,
                entry.SessionId,
                entry.MadeAt.ToDateTimeUtc().ToString("yyyy-MM-ddTHH:mm:ss.fffZ", CultureInfo.InvariantCulture),
                entry.Who,
                data.RootElement.Clone()
            );
        }

        public Quantities.Outcome<JournalEntry> Entry(Workbook book)
        {
            if (
                !Guid.TryParse(Id, out Guid id)
                || Kind is null
                || !EntryKinds.OfTheFloor.Contains(Kind)
                || Session is not { Length: > 0 and <= Longest }
                || Who is not { Length: > 0 and <= Longest }
                || Data.ValueKind != JsonValueKind.Object
                || InstantPattern.ExtendedIso.Parse(MadeAt ?? "") is not { Success: true } made
            )
            {
                return Quantities.Refusal.Of($"It is not written as the floor view writes entries.");
            }

            if (
                Kind is EntryKinds.Kit or EntryKinds.Minutes
                    ? Athlete is not null
                    : Athlete is null || book.Find(Athlete) is null
            )
            {
                return Quantities.Refusal.Of($"Its athlete is not in the squad.");
            }

            string json = JsonSerializer.Serialize(Data);
            var entry = new JournalEntry(id.ToString(), Kind, Athlete, Session, made.Value, Who, json);
            return Kind switch
            {
                EntryKinds.Set
                    when JournalReading.Read<SetEntry>(entry)
                        is not {
                            Exercise: { Length: > 0 and <= Longest },
                            Number: >= 1 and <= 99,
                            Reps: >= 0 and <= 999,
                            Contacts: >= 0 and <= 9999,
                            Faults: null or (>= 0 and <= 999),
                            Test: null or { Length: > 0 and <= Longest },
                            HeightM: null or (> 0 and < 1.5),
                            ContactTimeS: null or (> 0.02 and < 5)
                        } => Quantities.Refusal.Of($"Its set is not one that can have been done."),
                EntryKinds.Pain
                    when JournalReading.Read<PainEntry>(entry)
                        is not (
                            (
                                { Score: >= 0 and <= 10, SiteNew: false }
                                or { Score: null or (> 0 and <= 10), SiteNew: true }
                            )
                            and {
                                When: "rest" or "night" or "during" or "after" or "next-morning",
                                Work: null
                                    or {
                                        Sets: >= 0 and <= 99,
                                        ContactsPerSet: >= 0 and <= 999,
                                        StopsAbove: >= 0 and <= 10
                                    }
                            }
                        ) => Quantities.Refusal.Of($"Its pain is not from 0 to 10, or has no time."),
                EntryKinds.Effort
                    when JournalReading.Read<EffortEntry>(entry)
                        is not { Rpe: >= 0 and <= 10, Minutes: >= 1 and <= 600 } => Quantities.Refusal.Of(
                    $"Its effort is not from 0 to 10, or has no minutes."
                ),
                EntryKinds.PainWithdrawn
                    when JournalReading.Read<PainWithdrawnEntry>(entry)
                        is not { Pain: { Length: > 0 and <= Longest } pain, By: { Length: > 0 and <= Longest } by }
                        || !Guid.TryParse(pain, out _)
                        || string.IsNullOrWhiteSpace(by) => Quantities.Refusal.Of(
                    $"A pain is taken back by its id and with a person's name."
                ),
                EntryKinds.PainPlace
                    when JournalReading.Read<PainPlaceEntry>(entry)
                        is not {
                            Pain: { Length: > 0 and <= Longest } pain,
                            Site: { Length: > 0 and <= Longest } site,
                            Side: null or "left" or "right" or "both"
                        }
                        || !Guid.TryParse(pain, out _)
                        || string.IsNullOrWhiteSpace(site) => Quantities.Refusal.Of(
                    $"Where it hurt is said of a pain by its id, with a place."
                ),
                EntryKinds.Kit
                    when JournalReading.Read<KitEntry>(entry)
                        is not { Kit: { Length: > 0 and <= Longest }, Count: >= 0 and <= 99 } => Quantities.Refusal.Of(
                    $"Its kit is not counted from 0 to 99."
                ),
                EntryKinds.Minutes when JournalReading.Read<MinutesEntry>(entry) is not { Minutes: >= 1 and <= 600 } =>
                    Quantities.Refusal.Of($"Its minutes are not from 1 to 600."),
                _ => entry,
            };
        }
    }
}
