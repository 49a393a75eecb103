using Jumpwright.Recordings;

namespace Jumpwright.Tests.Outside.House;

public class RefusalsPageTests
{
    [Fact]
    public void Page_HoldsEverySentenceOfTheCode()
    {
        string made = RefusalsPage.Write();
        string path = Repository.At("docs", "refusals.md");
        if (Environment.GetEnvironmentVariable("JUMPWRIGHT_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, made);
        }

        string[] there = File.ReadAllText(path).Split('\n');
        string[] missing = [.. made.Split('\n').Except(there)];
        string[] stale = [.. there.Except(made.Split('\n'))];
        Assert.True(
            missing.Length + stale.Length == 0,
            "docs/refusals.md is not what the code says; run this test once with JUMPWRIGHT_WRITE_DOCS=1. Missing:\n"
                + string.Join("\n", missing)
                + "\nNo more in the code:\n"
                + string.Join("\n", stale)
        );
    }

    /// <summary>Nobody has to tell one refusal from another by its words.</summary>
    [Fact]
    public void Refusal_HasItsKind_BesideItsWords()
    {
        (string Name, Quantities.Refusal Refusal)[] all =
        [
            // These two are of a folder, and no recording is in sight.
            .. RefusalsPage.EveryRefusal.Where(r => r.Name is not ("NoFolder" or "NotASquad")),
        ];
        Assert.True(all.Length > 80);
        Assert.All(all, r => Assert.True(r.Refusal.Kind() is not null, $"{r.Name} has no kind: {r.Refusal}"));
        Assert.Equal(Enum.GetValues<RefusedFor>().Order(), all.Select(r => r.Refusal.Kind()!.Value).Distinct().Order());
    }

    [Fact]
    public void Page_KnowsEveryClassOfSentences() =>
        Assert.Empty(RefusalsPage.ClassesInTheCode.Except(RefusalsPage.ClassesOnThePage));

    [Fact]
    public void Refusal_IsOneSentence_ThatSaysWhatToDo() =>
        Assert.All(
            RefusalsPage.Refusals,
            r =>
            {
                Assert.EndsWith(".", r.Sentence, StringComparison.Ordinal);
                Assert.DoesNotContain(". ", r.Sentence, StringComparison.Ordinal);
                Assert.True(
                    r.Sentence.Contains(": ", StringComparison.Ordinal)
                        || r.Sentence.Contains("; ", StringComparison.Ordinal),
                    $"{r.Name} does not say what to do: {r.Sentence}"
                );
            }
        );
}
