using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.App.Intake;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What the measuring of a recording says (cautions, refusals, by which method) stands in the language of the page.</summary>
[Collection("pages")]
public partial class MeasuredWordsTests(ServedDemo demo)
{
    [Fact]
    public async Task EveryTrialsPage_SaysItsCautionsAndMethodsInGerman_AndMarksNothingAsEnglish()
    {
        MeasuredTrial[] trials =
        [
            .. demo
                .Desk.Book.Leaves.SelectMany(l => l.History.Trials)
                // One of each kind, and all that have something to say.
                .GroupBy(t => (t.Trial.Task, t.Device, Says: string.Join(' ', t.Trial.Warnings)))
                .Select(g => g.First()),
        ];
        Assert.True(trials.SelectMany(t => t.Trial.Warnings).Distinct().Count() > 15);
        foreach (MeasuredTrial trial in trials)
        {
            string page = await German(App.Pages.Paths.Trial(trial.Sha256, trial.Trial.Number));
            Assert.Equal("", InEnglish(page));
            Assert.Equal(trial.Trial.Warnings.Length, Warning().Count(page));
            Assert.All(trial.Trial.Warnings, w => Assert.DoesNotContain(w, page, StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task RefusedRecordings_SayWhyInGerman_ThoughTheStoreKeepsEnglishWords()
    {
        RefusedRecording[] refused = [.. demo.Desk.Book.Material.Refused];
        Assert.True(refused.Length >= 5, $"{refused.Length} refused");
        foreach (string path in (string[])["/refused", "/import"])
        {
            string page = await German(path);
            Assert.Equal("", InEnglish(page));
            Assert.All(refused, r => Assert.Contains(Path.GetFileName(r.File), page, StringComparison.Ordinal));
            Assert.All(refused, r => Assert.DoesNotContain(r.Sentence, page, StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task AnIntakeOfWhatCannotBeRead_SaysInGermanWhatIsWrongWithEach()
    {
        await using SquadSite site = await SquadSite.Open();
        var incoming = new Incoming(site.Desk);
        string intake = Guid.NewGuid().ToString();
        foreach (
            (string name, string text) in (IEnumerable<(string, string)>)
                [
                    ("empty.csv", ""),
                    ("german.csv", "zeit;kraft\n0,001;700\n"),
                    ("label.csv", "time_s,force_N\n0,700\n"),
                    (
                        "trials.csv",
                        "file,athlete,date,task,body_mass_kg,external_load_kg,drop_height_m,limb,plates\n"
                            + "gone.csv,a01,2027-01-04,drop-jump,,,,,\n"
                            + "label.csv,a01,4.1.2027,cartwheel,7,,\"0,4\",arms,x\n"
                    ),
                ]
        )
        {
            using var bytes = new MemoryStream(Encoding.UTF8.GetBytes(text));
            (await incoming.Keep(intake, name, bytes, TestContext.Current.CancellationToken)).Require();
        }

        incoming.Finish(intake, "test", TestContext.Current.CancellationToken).Require();
        string page = (await site.Get($"/import?done={intake}", "de")).Text;
        Assert.Equal("", InEnglish(page));
        Assert.Contains("Die Datei ist leer: die Aufnahme neu aus dem Gerät exportieren.", page);
        Assert.Contains("Die Spalten sind durch Semikolons oder Tabulatoren getrennt", page);
        Assert.Contains("führt „gone.csv“ auf, aber diese Datei gibt es nicht", page);
    }

    /// <summary>In English it is what `measure` prints; in German it has words of its own.</summary>
    [Fact]
    public async Task EveryMethodOfTheSquad_HasWordsInBothLanguages()
    {
        Measure[] measures =
        [
            .. demo
                .Desk.Book.Leaves.SelectMany(l =>
                    l.History.Trials.SelectMany(t => t.Trial.Measures).Concat(l.Profile.Current.Select(e => e.Measure))
                )
                .DistinctBy(m => m.Method),
        ];
        await Task.Yield();
        Assert.True(measures.Length > 20, string.Join("; ", measures.Select(m => m.Method)));
        foreach (Measure measure in measures)
        {
            Speech.Use(new Speech("en", UnitSystem.Metric));
            // The rule of the onset is said in words that hold its numbers; every other method as the contract names it.
            Assert.Equal(
                new Piece(
                    measure.Method == "onset-5sd-30ms"
                        ? "start of movement: 30 ms before the force left that of standing by 5 standard deviations"
                        : MeasureWords.Method(measure)
                ),
                MeasureWords.MethodSaid(measure)
            );
            Speech.Use(new Speech("de", UnitSystem.Metric));
            Assert.False(MeasureWords.MethodSaid(measure).IsEnglish, measure.Method);
            Assert.NotEqual(MeasureWords.Method(measure), MeasureWords.MethodSaid(measure).Text);
        }

        Measure unknown = measures[0] with { Method = "by the moon" };
        Assert.Equal(new Piece("by the moon", IsEnglish: true), MeasureWords.MethodSaid(unknown));
    }

    private async Task<string> German(string path)
    {
        using var client = new HttpClient();
        client.DefaultRequestHeaders.Add("Accept-Language", "de");
        return PageText.Of(
            await client.GetStringAsync(new Uri(demo.Address + path), TestContext.Current.CancellationToken)
        );
    }

    /// <summary>What a page marks as English.</summary>
    private static string InEnglish(string page) => string.Join('\n', Marked().Matches(page).Select(m => m.Value));

    [GeneratedRegex("<[^>]* lang=\"en\"[^>]*>[^<]*")]
    private static partial Regex Marked();

    [GeneratedRegex("<p class=\"note\" data-caution")]
    private static partial Regex Warning();
}
