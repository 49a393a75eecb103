using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// On a page in German only what nobody may translate is English: where a paper is to be found, names, and what people wrote.
/// Everything that the program itself says is said in German.
/// </summary>
public partial class EnglishOnGermanPagesTests
{
    [Fact]
    public async Task OnlySources_Names_AndWhatPeopleWrote_AreMarkedAsEnglish()
    {
        await using SquadSite site = await SquadSite.Open();
        site.Plan();
        await site.Post("/settings/speech", ("units", "InchPound"), ("language", "de"));
        PlannedSession session = site.Desk.Book.PlanOrNull!.Plan.Sessions.First(s =>
            s.Athletes.Any(a => a.Items.Length > 0)
        );
        AthleteSession athlete = session.Athletes.First(a => a.Items.Length > 0);
        // Three sets, the second with so many faults that the rule stops it: the page of what was done says so.
        for (int set = 1; set <= 3; set++)
        {
            site.Desk.Write(Logged(session, athlete, set, faults: set == 2 ? 9 : 0));
        }

        string[] athletes = [.. site.Desk.Book.Leaves.Select(l => $"/athletes/{l.Athlete.Id}")];
        string why = $"/cards/{session.Slot.Id}/{athlete.AthleteId}/why";
        string[] pages =
        [
            "/",
            "/week",
            "/week/limits",
            "/week/left-out",
            "/week/stations",
            "/done",
            "/settings/rules",
            .. athletes,
            .. athletes.Take(2).SelectMany(a => (string[])[$"{a}/said", $"{a}/ladder", $"{a}/measures"]),
            why,
            .. site.Desk.Book.Catalogue.Exercises.Where((_, i) => i % 9 == 0).Select(e => $"{why}?not={e.Id}"),
        ];
        HashSet<string> may = [.. May(site)];
        var left = new List<string>();
        foreach (string path in pages)
        {
            (HttpStatusCode status, string page) = await site.Get(path);
            Assert.Equal((path, HttpStatusCode.OK), (path, status));
            Assert.Contains("<html lang=\"de\"", page, StringComparison.Ordinal);
            left.AddRange(
                Marked()
                    .Matches(page)
                    .Select(m => PageText.Of(m.Groups["words"].Value).Trim())
                    .Where(words => words.Length > 0 && !may.Contains(words))
                    .Select(words => $"{path}: {words}")
            );
        }

        Assert.Equal("", string.Join('\n', left.Distinct(StringComparer.Ordinal)));
    }

    [Fact]
    public async Task WhatTheReportSays_StandsInGerman_AndInInches()
    {
        await using SquadSite site = await SquadSite.Open();
        await site.Post("/settings/speech", ("units", "InchPound"), ("language", "de"));
        (_, string page) = await site.Get("/athletes/a01");
        page = PageText.Of(page);
        Assert.Matches(
            @"Sprunghöhe, Countermovement-Jump \([^)]*\)\. Niveau [0-9,]+ ± [0-9,]+ Zoll nach \d+ Einheiten",
            page
        );
        Assert.Matches(@"Aus [0-9,]+ Zoll trainieren: Index", page);
        // In the picture too.
        Assert.Contains("Höhe, von der herabgestiegen wird (Zoll); Band: 95 %", page, StringComparison.Ordinal);
        Assert.Contains("Tag; Punkte: Mittel einer Einheit", page, StringComparison.Ordinal);
    }

    private static JournalEntry Logged(PlannedSession session, AthleteSession athlete, int set, int faults) =>
        new(
            $"set-{set}",
            EntryKinds.Set,
            athlete.AthleteId,
            session.Slot.Id,
            Instant.FromUtc(2027, 1, 4, 17, set),
            "coach",
            JsonSerializer.Serialize(new SetEntry(athlete.Items[0].Dose.ExerciseId, set, 5, 5, faults, false, null))
        );

    /// <summary>What stands in English on any page: papers, exercises by their names, and the squad's own words.</summary>
    private static IEnumerable<string> May(SquadSite site)
    {
        IEnumerable<string?> written = site.Desk.Book.Leaves.SelectMany(l =>
            (IEnumerable<string?>)
                [
                    l.Athlete.Sport,
                    l.Athlete.Operation?.Site,
                    .. l.History.Symptoms.Select(s => s.Site),
                    .. l.History.Symptoms.Select(s => s.Tissue),
                    .. l.History.Symptoms.Select(s => s.NamedBy),
                    .. l.History.Symptoms.Select(s => s.Note),
                    .. l.History.Restrictions.Select(r => r.SetBy),
                    .. l.History.Restrictions.Select(r => r.Role),
                    .. l.History.Restrictions.Select(r => r.Limit?.Replace("<=", "≤", StringComparison.Ordinal)),
                    .. l.History.Restrictions.Select(r => r.Note),
                    .. l.History.Screens.Select(s => s.Assessor),
                ]
        );
        return Bibliography
            // Several in a row end with the mark between them instead of their own stop.
            .Standard.Sources.Values.SelectMany(s => new[] { s.Text, s.Text.TrimEnd('.') })
            .Concat(site.Desk.Book.Catalogue.Exercises.Select(e => e.Name))
            .Concat(site.Desk.Book.Material.Squad.Fixtures.Select(f => f.Name))
            .Concat(written.OfType<string>());
    }

    /// <summary>Words that say of themselves that they are English.</summary>
    [GeneratedRegex("<[a-z0-9]+ [^>]*lang=\"en\"[^>]*>(?<words>[^<]*)<", RegexOptions.ExplicitCapture)]
    private static partial Regex Marked();
}
