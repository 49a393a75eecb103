using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Storage.Stores;
using NodaTime;
using NodaTime.Text;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Pages.Routes;

/// <summary>
/// A stop sign, what a clinician allows or forbids, a new body mass: written into the journal beside the folder, by name and day. Not
/// under the addresses that paired devices reach, since such words are for this machine.
/// </summary>
internal static class HealthRoutes
{
    private const string Who = "health page";
    private const int LongestNote = 200;

    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet("/health/{id}", (string id) => Page(desk, id));
        Post("sign", Sign);
        Post("restriction", Restrict);
        Post("take-back", TakeBack);
        Post("end", End);
        Post("body", Body);

        void Post(string form, Func<FrontDesk, AthleteLeaf, IFormCollection, (JournalEntry?, FormFault?)> read) =>
            app.MapPost(
                "/health/{id}/" + form,
                async (string id, HttpRequest request, CancellationToken cancel) =>
                    Answer(desk, id, read, await request.ReadFormAsync(cancel))
            );
    }

    private static IResult Answer(
        FrontDesk desk,
        string id,
        Func<FrontDesk, AthleteLeaf, IFormCollection, (JournalEntry?, FormFault?)> read,
        IFormCollection form
    )
    {
        if (desk.Book.Find(id) is not { } leaf)
        {
            return Answers.NotFound(desk.Book);
        }

        (JournalEntry? entry, FormFault? fault) = read(desk, leaf, form);
        if (entry is null)
        {
            return Page(desk, id, fault);
        }

        desk.Write(entry);
        return new SeeOther(
            Paths.Athlete(id)
                + entry.Kind switch
                {
                    EntryKinds.Sign or EntryKinds.SignTakenBack => "#symptoms",
                    EntryKinds.Body => "",
                    _ => "#restrictions",
                }
        );
    }

    private static IResult Page(FrontDesk desk, string id, FormFault? fault = null) =>
        desk.Book.Find(id) is { } leaf
            ? Answers.Page<HealthPage>(
                new
                {
                    desk.Book,
                    Leaf = leaf,
                    Theirs = desk.Journal.Where(e => e.AthleteId == id).ToArray(),
                    Fault = fault,
                }
            )
            : Answers.NotFound(desk.Book);

    private static (JournalEntry?, FormFault?) Sign(FrontDesk desk, AthleteLeaf leaf, IFormCollection form)
    {
        (JournalEntry?, FormFault?) No(string field, string why) => Wrong("sign", field, why, form);
        string what = form["what"].ToString();
        return !SignEntry.All.ContainsKey(what) ? No("what", "health.sign.what.wrong")
            : Day(form["on"]) is not { } on || on > desk.Book.Day ? No("sign-on", "health.sign.on.wrong")
            : IsSideAlone(form) ? No("sign-site", "health.side.alone")
            : (Entry(leaf, EntryKinds.Sign, on, new SignEntry(what, Place(form["site"]), SideOf(form["side"]))), null);
    }

    private static (JournalEntry?, FormFault?) Restrict(FrontDesk desk, AthleteLeaf leaf, IFormCollection form)
    {
        (JournalEntry?, FormFault?) No(string field, string why) => Wrong("restriction", field, why, form);
        string by = Cell(form["set_by"]);
        string role = Cell(form["role"]);
        ImmutableArray<string> allowed = [.. form["allowed"].OfType<string>()];
        ImmutableArray<string> forbidden = [.. form["forbidden"].OfType<string>()];
        string contacts = Cell(form["contacts"]);
        string drop = Metric(form, "drop", "cm");
        string[] limits =
        [
            .. contacts.Length > 0 ? [$"contacts <= {contacts}"] : Array.Empty<string>(),
            .. drop.Length > 0 ? [$"drops <= {drop} cm"] : Array.Empty<string>(),
        ];
        bool ends = allowed.Intersect(HealthPage.Ending, StringComparer.Ordinal).Any();
        bool onlyEnds =
            ends && forbidden.Length + limits.Length == 0 && allowed.All(w => HealthPage.Ending.Contains(w));
        string lastDay = Cell(form["until"]);
        bool endless = form["endless"] == "yes";
        bool whole = form["whole"] == "yes";
        (string Field, string Why)? fault =
            by.Length == 0 ? ("set-by", "health.by.wrong")
            : role.Length == 0 ? ("role", "health.role.wrong")
            : ends && !RoleWords.Licensed.Contains(role) ? ("role", "health.role.licensed")
            : Day(form["from"]) is not { } first ? ("from", "health.from.wrong")
            : ends && first > desk.Book.Day ? ("from", "health.from.later")
            : lastDay.Length > 0 && (Day(lastDay) is not { } last || last < first) ? ("until", "health.until.wrong")
            : onlyEnds && lastDay.Length > 0 ? ("until", "health.until.ended")
            : !onlyEnds && lastDay.Length > 0 == endless ? ("until", "health.until.choose")
            : Place(form["site"]) is not null == whole ? ("site", "health.site.choose")
            : IsSideAlone(form) ? ("site", "health.side.alone")
            : contacts.Length > 0 && !IsWithin(contacts, 0, 999, whole: true) ? ("contacts", "health.contacts.wrong")
            : drop.Length > 0 && !IsWithin(drop, 0, 100, whole: false) ? ("drop", "health.drop.wrong")
            : allowed.Length + forbidden.Length + limits.Length == 0 ? ("forbidden-all", "health.nothing")
            : !allowed.All(w => IsAllowedWord(desk, w)) || !forbidden.All(w => HealthPage.ForbiddenWords.Contains(w))
                ? ("forbidden-all", "health.unknown")
            : IsContradiction(allowed, forbidden) ? ("forbidden-all", "health.contradiction")
            : null;
        if (fault is { } wrong)
        {
            return No(wrong.Field, wrong.Why);
        }

        var entry = new RestrictionEntry(
            Dates.Iso(Day(form["from"])!.Value),
            lastDay.Length > 0 ? lastDay : null,
            Place(form["site"]),
            SideOf(form["side"]),
            allowed,
            forbidden,
            limits.Length == 0 ? null : string.Join("; ", limits),
            by,
            role,
            Cell(form["note"]) is { Length: > 0 } note ? note : null
        );
        return EndsNothing(desk, leaf, entry) is { } nothing
            ? No("allowed-stop-sign-lifted", nothing)
            : (Entry(leaf, EntryKinds.Restriction, desk.Book.Day, entry), null);
    }

    private static bool IsAllowedWord(FrontDesk desk, string word) =>
        HealthPage.AllowedWords.Contains(word) || desk.Book.Catalogue.Find(word) is not null;

    /// <summary>Everything forbidden and something allowed or ended; or everything allowed and then some exercises only.</summary>
    private static bool IsContradiction(ImmutableArray<string> allowed, ImmutableArray<string> forbidden) =>
        (forbidden.Contains("all") && allowed.Length > 0)
        || (allowed.Contains("all") && allowed.Any(w => !HealthPage.AllowedWords.Contains(w)));

    /// <summary>A side that was chosen for a place that nobody wrote.</summary>
    private static bool IsSideAlone(IFormCollection form) =>
        SideOf(form["side"]) is not null && Place(form["site"]) is null;

    /// <summary>
    /// Why a word that ends a rule would end none: it would stand there unread, and lift what comes later that day. Null where it ends
    /// what it says.
    /// </summary>
    private static string? EndsNothing(FrontDesk desk, AthleteLeaf leaf, RestrictionEntry entry)
    {
        Restriction row = entry.Of(leaf.Athlete.Id);
        int Standing(string rule, params IEnumerable<Restriction> rows) =>
            SafetyRules
                .For(leaf.History with { Restrictions = [.. rows] }, desk.Book.Day)
                .Count(r => r.LimitId == rule);
        return entry.Allowed.Contains("stop-sign-lifted")
            && Standing("stop-sign", [.. leaf.History.Restrictions, row])
                >= Standing("stop-sign", leaf.History.Restrictions)
                ? "health.lift.none"
            : entry.Allowed.Contains("operation-discharged")
            && (leaf.Athlete.Operation is null || Standing("after-operation", row) > 0)
                ? "health.discharge.none"
            : null;
    }

    private static (JournalEntry?, FormFault?) TakeBack(FrontDesk desk, AthleteLeaf leaf, IFormCollection form)
    {
        string wrong = form["entry"].ToString();
        string by = Cell(form["by"]);
        JournalEntry? written = desk.Journal.FirstOrDefault(e =>
            e.Id == wrong && e.Kind is EntryKinds.Restriction or EntryKinds.Sign && e.AthleteId == leaf.Athlete.Id
        );
        (string kind, string part, string late) =
            written?.Kind == EntryKinds.Sign
                ? (EntryKinds.SignTakenBack, "sign", "health.back.sign.late")
                : (EntryKinds.RestrictionTakenBack, "restrictions", "health.back.late");
        return by.Length == 0 ? Wrong("take-back", "by-" + wrong, "health.by.wrong", form)
            : written is null ? Wrong("take-back", "restrictions", "health.back.gone", form)
            : !TakingBack.IsInTime(
                SystemClock.Instance.GetCurrentInstant(),
                written,
                SquadZone.Of(desk.Book.Material.Squad.TimeZone)
            )
                ? Wrong("take-back", part, late, form)
            : (Entry(leaf, kind, desk.Book.Day, new TakenBackEntry(wrong, by)), null);
    }

    /// <summary>A last day for what was written on this page: it comes earlier, and past it nothing is planned until somebody licensed writes anew.</summary>
    private static (JournalEntry?, FormFault?) End(FrontDesk desk, AthleteLeaf leaf, IFormCollection form)
    {
        string id = form["entry"].ToString();
        string by = Cell(form["by"]);
        string role = Cell(form["role"]);
        RestrictionEntry? said = JournalReading
            .RestrictionsIn(
                [.. desk.Journal.Where(e => e.AthleteId == leaf.Athlete.Id)],
                SquadZone.Of(desk.Book.Material.Squad.TimeZone)
            )
            .FirstOrDefault(r => r.Entry.Id == id && r.TakenBackBy is null)
            .Said;
        return by.Length == 0 ? Wrong("end", "end-by-" + id, "health.by.wrong", form)
            : !RoleWords.Licensed.Contains(role) ? Wrong("end", "end-role-" + id, "health.end.licensed", form)
            : said is null ? Wrong("end", "restrictions", "health.back.gone", form)
            : Day(form["until"]) is not { } until
            || said.EndingOn([until]).Until != Dates.Iso(until)
            || Day(said.Until) is { } own && until >= own
                ? Wrong("end", "end-until-" + id, "health.end.wrong", form)
            : (
                Entry(
                    leaf,
                    EntryKinds.RestrictionEnded,
                    desk.Book.Day,
                    new RestrictionEndedEntry(id, Dates.Iso(until), by, role)
                ),
                null
            );
    }

    private static (JournalEntry?, FormFault?) Body(FrontDesk desk, AthleteLeaf leaf, IFormCollection form)
    {
        string mass = Metric(form, "mass", "kg");
        string stature = Metric(form, "stature", "m");
        Athlete row = leaf.Dossier.Written.Athlete;
        return mass.Length + stature.Length == 0 ? Wrong("body", "mass", "health.body.nothing", form)
            : mass.Length > 0 && !IsWithin(mass, 15, 300, whole: false)
                ? Wrong("body", "mass", "health.mass.wrong", form)
            : stature.Length > 0 && !IsWithin(stature, 0.8, 2.6, whole: false)
                ? Wrong("body", "stature", "health.stature.wrong", form)
            : (
                Entry(
                    leaf,
                    EntryKinds.Body,
                    desk.Book.Day,
                    new BodyEntry(Number(mass), Number(stature), row.BodyMassKg, row.StatureM)
                ),
                null
            );
    }

    /// <summary>An entry of this page, for a day.</summary>
    private static JournalEntry Entry(AthleteLeaf leaf, string kind, LocalDate day, object words) =>
        JournalWord.Now(kind, leaf.Athlete.Id, Dates.Iso(day), Who, words);

    private static (JournalEntry?, FormFault?) Wrong(string form, string field, string why, IFormCollection typed) =>
        (null, new FormFault(form, field, new Piece(ReadersUnits.In(T[why])), typed));

    private static string Cell(string? typed) =>
        (typed ?? "").Trim() is { Length: <= LongestNote } cell ? cell : (typed ?? "").Trim()[..LongestNote];

    /// <summary>A length or mass in its metric unit, with a decimal point, whatever it was typed in.</summary>
    private static string Metric(IFormCollection form, string name, string unit) =>
        TypedAmount.Metric(Cell(form[name]), unit, TypedAmount.UnitsOf(form[TypedAmount.Field]));

    private static string? Place(string? typed) =>
        Cell(typed) is { Length: > 0 } place ? PlaceWords.Read(place).ToLowerInvariant() : null;

    private static string? SideOf(string? typed) => typed is "left" or "right" or "both" ? typed : null;

    private static LocalDate? Day(string? typed) =>
        LocalDatePattern.Iso.Parse(typed ?? "") is { Success: true, Value: var day } ? day : null;

    private static double? Number(string typed) =>
        double.TryParse(typed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
            ? value
            : null;

    private static bool IsWithin(string typed, double least, double most, bool whole) =>
        Number(typed) is { } value && value >= least && value <= most && (!whole || value == Math.Floor(value));
}
