using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Recordings;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>One jump has one name in German, as a test and as an exercise; what is owned is "beherrscht" everywhere.</summary>
public class GermanNamesTests
{
    /// <summary>Words that stood beside the ones that are used now.</summary>
    private static readonly string[] Gone = ["Strecksprung", "Strecksprünge", "erworben", "Erworben"];

    [Theory]
    [InlineData(JumpTask.CountermovementJump, "countermovement-jump", "Countermovement-Jump")]
    [InlineData(JumpTask.SquatJump, "squat-jump", "Squat-Jump")]
    [InlineData(JumpTask.SnapDown, "snap-down", "Snap-down")]
    [InlineData(JumpTask.DropLanding, "drop-landing", "Landung vom Kasten")]
    public void AJump_IsCalledTheSame_AsATestAndAsAnExercise(JumpTask task, string exercise, string name)
    {
        Assert.Equal(name, TextBook.Of("de", $"task.{task}"));
        Assert.Equal(name, Wordings.Of(Catalogue.Standard.Find(exercise)!, "de").Name);
    }

    [Fact]
    public void NoOtherWordForThemIsLeft() =>
        Assert.DoesNotContain(GermanText.All, words => Gone.Any(g => words.Contains(g, StringComparison.Ordinal)));
}
