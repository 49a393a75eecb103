using System.Reflection;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Exercises;

public class CatalogueReadTests
{
    private static readonly string Good = File("snap-down");

    [Fact]
    public void Read_AFileAsShipped_GivesTheExercise()
    {
        Catalogue catalogue = Read(("a", Good)).Require();
        Exercise e = Assert.Single(catalogue.Exercises);
        Assert.Equal("snap-down", e.Id);
        Assert.Equal(1, e.Demand[Tissue.Achilles]);
        Assert.Equal(2, e.Cues.Length);
    }

    [Fact]
    public void Read_OneIdInTwoFiles_IsRefused() =>
        Assert.Contains("taken by another file", Refused(("a", Good), ("b", Good)), StringComparison.Ordinal);

    [Theory]
    [InlineData("\"stage\": \"landing\"", "\"stage\": \"take-off\"", "stage is 'take-off'; use one of landing,")]
    [InlineData("\"name\"", "\"nickname\"", "nickname")]
    [InlineData("\"contacts_per_rep\": 1,", "", "contacts_per_rep")]
    [InlineData("\"contacts_per_rep\": 1,", "\"contacts_per_rep\": \"one\",", "line")]
    [InlineData("\"purpose\":", "\"id\": \"again\", \"purpose\":", "id")]
    public void Read_ACoachsSlip_IsRefusedWithTheFieldAndTheFile(string from, string to, string expected)
    {
        Assert.Contains(from, Good, StringComparison.Ordinal);
        string sentence = Refused(("mine.json", Good.Replace(from, to, StringComparison.Ordinal)));
        Assert.Contains("mine.json", sentence, StringComparison.Ordinal);
        Assert.Contains(expected, sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_TwoFiles_StandInTheOrderOfStages()
    {
        Catalogue catalogue = Read(("a", File("depth-jump")), ("b", Good)).Require();
        Assert.Equal(["snap-down", "depth-jump"], catalogue.Exercises.Select(e => e.Id));
    }

    [Fact]
    public void EntryTests_OfMeasures_AreNamesOfTheContract()
    {
        IEnumerable<object?> names = typeof(MeasureNames)
            .GetFields(BindingFlags.Public | BindingFlags.Static)
            .Where(f => f.IsLiteral)
            .Select(f => f.GetRawConstantValue());
        Assert.All(EntryTests.All.Where(t => t.IsMeasure), t => Assert.Contains(t.Id, names));
        Assert.All(EntryTests.All, t => Assert.True(Bibliography.Standard.TryFind(t.SourceId, out _), t.Id));
    }

    [Fact]
    public void Tests_ThatAreJumpsOrLifts_AmountToExercisesOfTheCatalogue()
    {
        IEnumerable<TestForm> forms = EntryTests
            .All.Where(t => !t.IsMeasure)
            .SelectMany(t => TestForms.Of(t.Id, null))
            .Concat(JumpTasks.All.SelectMany(task => TestForms.Of("jump_height_m", task)))
            .Concat(Enum.GetValues<QualityTest>().SelectMany(t => TestForms.Of(t)));
        Assert.All(forms.SelectMany(f => f.Exercises), id => Assert.NotNull(Catalogue.Standard.Find(id)));
        Assert.All(JumpTasks.All, task => Assert.NotEmpty(TestForms.Of("jump_height_m", task)));
        Assert.All(Enum.GetValues<QualityTest>(), test => Assert.NotEmpty(TestForms.Of(test)));
        Assert.True(Catalogue.Standard.Find(TestForms.Of("contact_time_s", "drop-jump")[0].Exercises[0])!.IsDepthJump);
    }

    private static Outcome<Catalogue> Read(params (string Name, string Json)[] files) =>
        Catalogue.Read(files.Select(f => KeyValuePair.Create(f.Name, f.Json)), Bibliography.Standard);

    private static string Refused(params (string Name, string Json)[] files)
    {
        Assert.False(Read(files).TryGet(out _, out Refusal? refusal));
        return refusal.Sentence;
    }

    private static string File(string id)
    {
        using Stream stream = typeof(Catalogue).Assembly.GetManifestResourceStream(
            $"Jumpwright.Exercises.Data.{id}.json"
        )!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
