using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Exercises;

public class WordingsTests
{
    private static Exercise Shipped => Catalogue.Standard.Find("depth-jump")!;

    public static TheoryData<string> Changes =>
        ["name", "purpose", "set_up", "cues", "faults", "progress", "stop_rule", "cautions"];

    [Fact]
    public void Of_AShippedExercise_IsTranslated()
    {
        ExerciseWords words = Wordings.Of(Shipped, "de");
        Assert.Equal("de", words.Language);
        Assert.Equal("Tiefsprung", words.Name);
        Assert.StartsWith("Aufhören, wenn die Höhe um 10 % fällt", words.StopRule, StringComparison.Ordinal);
        Assert.Same(words, Wordings.Of(Shipped, "de"));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("fr")]
    [InlineData("DE")]
    [InlineData("")]
    public void Of_AnotherLanguage_IsTheExercisesOwn(string language) => IsItsOwn(Shipped, language);

    [Theory]
    [MemberData(nameof(Changes))]
    public void Of_AnExerciseWithAnyWordChanged_KeepsItsOwn(string what) => IsItsOwn(Changed(what), "de");

    [Fact]
    public void Of_AnExerciseWithAnotherId_KeepsItsOwn() => IsItsOwn(Shipped with { Id = "my-depth-jump" }, "de");

    [Fact]
    public void Of_ACopyThatSaysTheSame_IsTranslated()
    {
        Exercise copy = Shipped with { MinutesPerSet = 4, Cues = [.. Shipped.Cues] };
        Assert.Same(Wordings.Of(Shipped, "de"), Wordings.Of(copy, "de"));
    }

    [Fact]
    public void Names_OfTheFilesOfWords_AreThoseOfTheExercises()
    {
        Assert.Equal(Ids("Jumpwright.Exercises.Data."), Ids("Jumpwright.Exercises.Words.de."));
        Assert.Equal(Catalogue.Standard.Exercises.Length, Ids("Jumpwright.Exercises.Data.").Count());
    }

    private static IEnumerable<string> Ids(string folder) =>
        Embedded.Names(folder, ".json").Select(n => n[folder.Length..]);

    private static void IsItsOwn(Exercise exercise, string language)
    {
        ExerciseWords words = Wordings.Of(exercise, language);
        Assert.Equal("en", words.Language);
        Assert.Equal(exercise.Name, words.Name);
        Assert.Equal(exercise.Purpose, words.Purpose);
        Assert.Equal(exercise.SetUp, words.SetUp);
        Assert.Equal(exercise.Cues, words.Cues);
        Assert.Equal(exercise.Faults, words.Faults);
        Assert.Equal(exercise.Progress, words.Progress);
        Assert.Equal(exercise.StopRule, words.StopRule);
        Assert.Equal(exercise.Cautions, words.Cautions);
    }

    private static Exercise Changed(string what) =>
        what switch
        {
            "name" => Shipped with { Name = "Mine" },
            "purpose" => Shipped with { Purpose = "Mine" },
            "set_up" => Shipped with { SetUp = "Mine" },
            "cues" => Shipped with { Cues = Shipped.Cues.SetItem(1, "Mine") },
            "faults" => Shipped with { Faults = Shipped.Faults.SetItem(2, Shipped.Faults[2] with { Fix = "Mine" }) },
            "progress" => Shipped with { Progress = "Mine" },
            "stop_rule" => Shipped with { StopRule = "Mine" },
            _ => Shipped with { Cautions = Shipped.Cautions.Add("Mine") },
        };
}
