using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Sessions;
using Jumpwright.Tests.Outside.Paper;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What is said of a squad, and what stands on every card to keep somebody safe, is read in the language of the page.</summary>
[Collection("pages")]
public partial class SquadSentencesTests(ServedDemo demo)
{
    /// <summary>
    /// Cards, rulings, ladders, findings, gains and the plan's reasons of the whole demo squad: in German each says the same numbers,
    /// nothing stays English, and no English word stands within.
    /// </summary>
    [Fact]
    public async Task EverySentenceOfTheSquad_SpeaksGerman_WithTheSameNumbers()
    {
        Sentence[] said = [.. OfTheSquad().Where(s => !IsPlain(s)).Distinct()];
        await Task.Yield();
        Assert.True(said.Length > 300, $"{said.Length} sentences");
        foreach (Sentence sentence in said)
        {
            Speech.Use(new Speech("en", UnitSystem.Metric));
            string english = SpokenSentences.Text(sentence);
            Speech.Use(new Speech("de", UnitSystem.Metric));
            Piece german = SpokenSentences.Of(sentence);
            Assert.False(german.IsEnglish, english);
            Assert.Equal(Sorted(english), Sorted(german.Text));
            Assert.DoesNotMatch(EnglishWord(), Named().Replace(german.Text, ""));
        }
    }

    private IEnumerable<Sentence> OfTheSquad()
    {
        PlannedWeek week = demo.Desk.Book.PlanOrNull!;
        foreach (SessionCard card in week.Cards)
        {
            yield return card.Headline;
            foreach (Sentence onEvery in card.OnEvery())
            {
                yield return onEvery;
            }

            if (card.NothingPlanned is { } nothing)
            {
                yield return nothing;
            }

            foreach (CardItem item in card.Items)
            {
                yield return SpokenExercises.Dose(item);
                yield return item.Why;
                yield return item.Rest;
                yield return item.StopWhen;
                yield return item.InsteadIfSore;
            }
        }

        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            yield return Sentences.Of(leaf);
            foreach (Ruling ruling in leaf.Rulings)
            {
                yield return ruling.Because;
            }

            foreach (RungReason reason in leaf.Ladder.Rungs.SelectMany(r => r.Reasons))
            {
                yield return reason.Sentence;
                yield return reason.CheapestTest ?? reason.Sentence;
            }

            foreach (Finding finding in leaf.Profile.Findings)
            {
                yield return finding.Sentence;
                yield return finding.NextTest ?? finding.Sentence;
            }
        }

        foreach (Sentence reason in week.Plan.Unmet.SelectMany(u => u.Because))
        {
            yield return reason;
        }

        foreach (
            Sentence reason in week
                .Plan.Sessions.SelectMany(s => s.Athletes)
                .SelectMany(a => a.Items)
                .SelectMany(i => i.Because)
        )
        {
            yield return reason;
        }
    }

    /// <summary>Words that came written out, such as a drop curve's.</summary>
    private static bool IsPlain(Sentence sentence) =>
        sentence.IsPlain || sentence.Arguments.OfType<Sentence>().Any(IsPlain);

    private static IEnumerable<string> Sorted(string text) => Numbers(text).Order(StringComparer.Ordinal);

    private static IEnumerable<string> Numbers(string text) => Number().Matches(text).Select(m => m.Value);

    /// <summary>What has a name of its own stands as it is written: roles, fixtures, kit and limits by their ids.</summary>
    [GeneratedRegex("Home match against \\w+|Away match at \\w+|[a-z]+(?:-[a-z]+)+", RegexOptions.ExplicitCapture)]
    private static partial Regex Named();

    [GeneratedRegex(@"\b(?:the|and|of|with|not|are|by|from|after|this|that|then|until)\b")]
    private static partial Regex EnglishWord();

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Number();
}
