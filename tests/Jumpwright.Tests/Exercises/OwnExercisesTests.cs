using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Exercises;

/// <summary>A coach's own exercise files.</summary>
public class OwnExercisesTests
{
    private static string Shipped(string id) => Embedded.Text($"Jumpwright.Exercises.Data.{id}.json");

    private static OwnExercises Join(params (string File, string Json)[] files) =>
        OwnExercises.Join(Catalogue.Standard, [.. files.Select(f => KeyValuePair.Create(f.File, f.Json))]);

    [Fact]
    public void NewExercise_ThatTheLinterPasses_JoinsAndIsReachedFromItsRegression()
    {
        string json = Shipped("box-jump-quarter-turn")
            .Replace("\"id\": \"box-jump-quarter-turn\"", "\"id\": \"gate-jump\"", StringComparison.Ordinal);
        OwnExercises own = Join(("exercises/gate-jump.json", json));
        Assert.Empty(own.Remarks);
        Exercise gate = own.Catalogue.Find("gate-jump")!;
        Assert.All(gate.Regressions, r => Assert.Contains("gate-jump", own.Catalogue.Find(r)!.Progressions));
        Assert.Empty(CatalogueLint.Check(own.Catalogue));
    }

    [Fact]
    public void KnownExercise_WithOtherCues_StandsInsteadOfTheShippedOne()
    {
        string json = Shipped("depth-jump")
            .Replace("Step off, floor is hot.", "Off, and up again.", StringComparison.Ordinal);
        OwnExercises own = Join(("exercises/depth-jump.json", json));
        Assert.Empty(own.Remarks);
        Assert.Contains("Off, and up again.", own.Catalogue.Find("depth-jump")!.Cues);
    }

    [Theory]
    [InlineData("\"achilles\": 3", "\"achilles\": 2", "tier")]
    [InlineData("\"achilles\": 72", "\"achilles\": 24", "h instead")]
    [InlineData("\"value\": 4,", "\"value\": 9,", "safety criterion")]
    public void KnownExercise_ThatAsksLessCare_IsLeftOutWithASentence(string from, string to, string says)
    {
        OwnExercises own = Join(
            ("exercises/depth-jump.json", Shipped("depth-jump").Replace(from, to, StringComparison.Ordinal))
        );
        Assert.Contains(says, Assert.Single(own.Remarks), StringComparison.Ordinal);
        Assert.Equal(Catalogue.Standard.Find("depth-jump"), own.Catalogue.Find("depth-jump"));
    }

    [Fact]
    public void OneBadFile_IsLeftOutAndTheOthersStay()
    {
        string good = Shipped("box-jump-quarter-turn")
            .Replace("\"id\": \"box-jump-quarter-turn\"", "\"id\": \"gate-jump\"", StringComparison.Ordinal);
        string unknownSource = Shipped("box-jump-quarter-turn")
            .Replace("\"id\": \"box-jump-quarter-turn\"", "\"id\": \"other-jump\"", StringComparison.Ordinal)
            .Replace("\"common-practice\"", "\"a-book-nobody-knows\"", StringComparison.Ordinal);
        OwnExercises own = Join(
            ("exercises/a.json", good),
            ("exercises/b.json", unknownSource),
            ("exercises/c.json", "{")
        );
        Assert.NotNull(own.Catalogue.Find("gate-jump"));
        Assert.Null(own.Catalogue.Find("other-jump"));
        Assert.Equal(2, own.Remarks.Length);
        Assert.Contains(own.Remarks, r => r.Contains("a-book-nobody-knows", StringComparison.Ordinal));
    }
}
