using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Demo;
using Jumpwright.Trials;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Tests.Simulation;

/// <summary>The demo squad's tables hang together, and its recordings say what the table says they should.</summary>
public class DemoSquadTests
{
    private static readonly LocalDate Today = new(2027, 1, 4);

    private static readonly Lazy<ImmutableArray<(string RelativePath, byte[] Bytes)>> Made = new(() =>
        DemoRecordings.Write(Text("simulated-trials.csv"))
    );

    [Fact]
    public void Squad_HasSixteenAthletes_AndTheSpecialOnes()
    {
        Dictionary<string, string>[] athletes = Rows("athletes.csv");
        Assert.Equal(16, athletes.Length);
        Assert.Equal(16, athletes.Select(a => a["id"]).Distinct().Count());
        Assert.Equal(2, athletes.Count(a => Period.Between(Day(a["birth_date"]), Today).Years < 16));
        Assert.Single(athletes, a => Number(a["body_mass_kg"]) > 100);
        Dictionary<string, string> operated = Assert.Single(athletes, a => a["operation_site"] == "knee");
        Assert.Equal(4, Period.Between(Day(operated["operation_date"]), Today, PeriodUnits.Months).Months);
        Dictionary<string, string> restriction = Assert.Single(Rows("restrictions.csv"));
        Assert.Equal(operated["id"], restriction["athlete"]);
        Assert.True(Day(restriction["from"]) <= Today && Today <= Day(restriction["until"]));
        Assert.Contains(Rows("symptoms.csv"), s => s["site"] == "achilles" && s["named_by"].Contains("physio"));
        Assert.Contains(
            Rows("symptoms.csv"),
            s => s["kind"] == "swelling" && Period.DaysBetween(Day(s["date"]), Today) <= 7
        );
        HashSet<string> tested = [.. Rows("simulated-trials.csv").Select(t => t["athlete"])];
        Assert.Contains(athletes, a => !tested.Contains(a["id"]) && a["level"].Length == 0);
        Assert.Contains(
            Rows("simulated-trials.csv").GroupBy(t => t["athlete"]),
            athlete => athlete.All(t => t["device"] == "camera")
        );
    }

    [Theory]
    [InlineData("screens.csv")]
    [InlineData("symptoms.csv")]
    [InlineData("completed.csv")]
    [InlineData("simulated-trials.csv")]
    public void Table_NamesOnlyKnownAthletes_AndDaysBeforeTheDemosToday(string table)
    {
        HashSet<string> ids = [.. Rows("athletes.csv").Select(a => a["id"])];
        Assert.All(
            Rows(table),
            row =>
            {
                Assert.Contains(row["athlete"], ids);
                Assert.True(Day(row["date"]) < Today, row["date"]);
            }
        );
    }

    [Fact]
    public void LogAndRestriction_NameOnlyExercisesOfTheCatalogue_AndCountTheirContacts()
    {
        Dictionary<string, Exercise> exercises = Catalogue.Standard.Exercises.ToDictionary(e => e.Id);
        Assert.All(
            Rows("completed.csv"),
            row =>
            {
                Exercise exercise = exercises[row["exercise"]];
                int legs = exercise.Limb == "each" ? 2 : 1;
                double contacts = Number(row["sets"]) * Number(row["reps"]) * exercise.ContactsPerRep * legs;
                Assert.Equal(contacts, Number(row["contacts"]));
            }
        );
        Assert.All(
            Rows("restrictions.csv").SelectMany(r => r["allowed"].Split(';')),
            id => Assert.True(exercises.ContainsKey(id), id)
        );
    }

    [Fact]
    public void Recordings_AreTheSameBytesTwice_AndAllInTheManifest()
    {
        ImmutableArray<(string RelativePath, byte[] Bytes)> again = DemoRecordings.Write(Text("simulated-trials.csv"));
        Assert.Equal(Made.Value.Select(f => f.RelativePath), again.Select(f => f.RelativePath));
        Assert.All(Made.Value.Zip(again), pair => Assert.Equal(pair.First.Bytes, pair.Second.Bytes));
        string manifest = System.Text.Encoding.UTF8.GetString(
            Made.Value.Single(f => f.RelativePath == "trials.csv").Bytes
        );
        Assert.Equal(Rows("simulated-trials.csv").Length + 1, manifest.Split('\n').Count(l => l.Length > 0));
        Assert.Equal(Made.Value.Length, Made.Value.Select(f => f.RelativePath).Distinct().Count());
    }

    [Fact]
    public void GoodRecordings_AreMeasuredWithinThreeCentimetres_OfWhatWasSimulated()
    {
        foreach (
            Dictionary<string, string> row in Rows("simulated-trials.csv").Where(r => r["defect"] is "" or "bom-crlf")
        )
        {
            Trial trial = Measure(row).Require()[0];
            if (row["task"] == "repeated-hops" && Number(row["contact_s"]) >= 0.25)
            {
                // Contracts §2: only contacts below 0.25 s count; with none of them, contacts only.
                Assert.NotEmpty(trial.Contacts);
                Assert.Null(trial.Find(MeasureNames.JumpHeightFlightTime));
                continue;
            }

            string name =
                row["task"] == "repeated-hops" || row["device"] is "mat" or "camera"
                    ? MeasureNames.JumpHeightFlightTime
                    : MeasureNames.JumpHeight;
            Measure? height = trial.Find(name);
            Assert.True(height is not null, $"{row["file"]}: no {name}");
            Assert.True(
                Math.Abs(height.Value - Number(row["height_m"])) < 0.03,
                $"{row["file"]}: {height.Value} for {row["height_m"]}"
            );
        }
    }

    [Fact]
    public void BadRecordings_AreRefused_OrMeasuredWithoutWhatTheyCannotTell()
    {
        foreach (
            Dictionary<string, string> row in Rows("simulated-trials.csv")
                .Where(r => r["defect"] is not ("" or "bom-crlf"))
        )
        {
            if (Measure(row).TryGet(out ImmutableArray<Trial> trials, out Refusal? refusal))
            {
                Assert.Equal("never-still", row["defect"]);
                Assert.Null(trials[0].FindTrusted(MeasureNames.JumpHeight));
                Assert.NotEmpty(trials[0].Warnings);
            }
            else
            {
                Assert.EndsWith(".", refusal.Sentence, StringComparison.Ordinal);
                Assert.NotEqual("never-still", row["defect"]);
            }
        }
    }

    private static Outcome<ImmutableArray<Trial>> Measure(Dictionary<string, string> row) =>
        Recording
            .From(Made.Value.Single(f => f.RelativePath == "recordings/" + row["file"]).Bytes)
            .Then(recording => Measuring.Of(recording));

    private static LocalDate Day(string text) => LocalDatePattern.Iso.Parse(text).Value;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Text(string name)
    {
        using Stream stream =
            typeof(DemoSquadTests).Assembly.GetManifestResourceStream("demo/" + name)
            ?? throw new InvalidOperationException("demo/" + name + " is not in the test assembly.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    private static Dictionary<string, string>[] Rows(string name)
    {
        string[] lines = Text(name).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string[] header = lines[0].Split(',');
        return
        [
            .. lines
                .Skip(1)
                .Select(line =>
                {
                    string[] cells = line.Split(',');
                    Assert.Equal(header.Length, cells.Length);
                    return header.Zip(cells).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal);
                }),
        ];
    }
}
