using System.Text.RegularExpressions;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Tests.Outside.House;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>The store keeps what a recording's measuring says as English words; the page knows the sentence by them again.</summary>
public partial class RecalledSentencesTests
{
    /// <summary>All refusals, repairs and cautions there are, as docs/refusals.md lists them.</summary>
    [Fact]
    public async Task EveryRefusalRepairAndCaution_IsKnownByItsWords_AndSaysTheSameNumbersInGerman()
    {
        (string Name, string Sentence)[] all = [.. RefusalsPage.EverySentence];
        await Task.Yield();
        Speech.Use(new Speech("de", UnitSystem.Metric));
        Assert.True(all.Length > 150, $"{all.Length} sentences");
        foreach ((string name, string english) in all)
        {
            Sentence recalled = RecalledSentences.Of(english);
            Assert.Equal(english, recalled.ToString());
            Piece german = SpokenSentences.Of(recalled);
            Assert.False(german.IsEnglish, $"{name}: {english}");
            Assert.NotEqual(english, german.Text);
            Assert.Equal(Numbers(english), Numbers(german.Text));
            Assert.DoesNotMatch(EnglishWord(), german.Text);
        }
    }

    [Theory]
    [InlineData(
        "The fall was 26 cm, not the 30 cm of the box: the measured one counts.",
        "Gefallen wurde aus 10,2 Zoll, nicht aus den 11,8 Zoll des Kastens: Die gemessene Höhe zählt."
    )]
    [InlineData(
        "The plate weighs 71.4 kg, but 80.0 kg are stated: check the label or the plate; the plate's weight was used.",
        "Die Platte wiegt 157,4 lb, angegeben sind aber 176,4 lb: die Angabe oder die Platte prüfen; verwendet wurde das Gewicht der Platte."
    )]
    // Words within, and several of them in a row.
    [InlineData(
        "Set by hand: take-off, touch-down. The measures follow from there.",
        "Von Hand gesetzt: Absprung, Aufsetzen. Die Messwerte folgen daraus."
    )]
    // What a file holds stands as it holds it, though it is a word of ours too.
    [InlineData(
        "Line 9: two events 'take-off' follow each other: one between them is missing; write every touch-down and take-off.",
        "Zeile 9: Zwei Ereignisse „take-off“ folgen aufeinander: Eines dazwischen fehlt; jedes touch-down und take-off schreiben."
    )]
    [InlineData(
        "trials.csv line 3: limb 'both legs' must be both, left, right or empty; drop_height_m '0,4' has a decimal comma: write a decimal point.",
        "trials.csv Zeile 3: limb „both legs“ muss both, left, right oder leer sein; drop_height_m „0,4“ hat ein Dezimalkomma: einen Dezimalpunkt schreiben."
    )]
    [InlineData(
        "trials.csv line 3: body_mass_kg 7 is outside 15 to 300 kg: correct it.",
        "trials.csv Zeile 3: body_mass_kg 7 liegt außerhalb von 15 bis 300 kg: berichtigen."
    )]
    public async Task WhatIsRecalled_IsSaidInTheLanguageAndUnitsOfThePage(string english, string german)
    {
        await Task.Yield();
        Speech.Use(new Speech("de", UnitSystem.InchPound));
        Assert.Equal(new Piece(german), SpokenSentences.Of(RecalledSentences.Of(english)));
    }

    /// <summary>Another version's words, somebody's own, and a sentence of ours round words that are not: all stay whole, and say that they are English.</summary>
    [Theory]
    [InlineData("The plate hummed a tune: play another.")]
    [InlineData("The fall was 26 feet, not the 30 cm of the box: the measured one counts.")]
    [InlineData("The fall was 26.50 cm, not the 30 cm of the box: the measured one counts.")]
    [InlineData("trials.csv line 3: the moon is full.")]
    [InlineData("Record again or ask the coach whether it was a jump.")]
    [InlineData("")]
    public async Task WhatNoTemplateMakes_StaysAsItWasWritten(string words)
    {
        await Task.Yield();
        Speech.Use(new Speech("de", UnitSystem.Metric));
        Assert.Equal(new Piece(words, IsEnglish: true), SpokenSentences.Of(RecalledSentences.Of(words)));
    }

    /// <summary>Reading takes time in the length of the words alone, whatever a file puts into them.</summary>
    [Fact]
    public void WordsOfAFileThatAreVeryLong_AreReadInTimeOfTheirLength()
    {
        string name = string.Concat(Enumerable.Repeat("line 1 lists 'a", 20_000));
        string words =
            $"trials.csv line 3 lists '{name}', but there is no such file: put it there, or take the row out.";
        Assert.False(RecalledSentences.Of(words).IsPlain);
        Assert.True(RecalledSentences.Of(words[..^1]).IsPlain);
    }

    private static string Numbers(string text) =>
        string.Join(' ', Number().Matches(text).Select(m => m.Value.Replace(',', '.')).Order(StringComparer.Ordinal));

    [GeneratedRegex(@"[0-9]+(?:[.,][0-9]+)?")]
    private static partial Regex Number();

    [GeneratedRegex(@"\b(?:the|and|of|with|not|are|by|from|after|this|that|then|until)\b")]
    private static partial Regex EnglishWord();
}
