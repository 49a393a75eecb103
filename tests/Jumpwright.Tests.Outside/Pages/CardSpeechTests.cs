using System.Text.RegularExpressions;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Sessions;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What stands on every card to keep somebody safe is read in the language of the page.</summary>
[Collection("pages")]
public partial class CardSpeechTests(ServedDemo demo)
{
    [Fact]
    public async Task QuestionsLandingLinesAndStops_SpeakGerman_WithTheSameNumbers()
    {
        SessionCard[] cards = [.. demo.Desk.Book.PlanOrNull!.Cards];
        // What is spoken holds for the rest of a method that waits, and no longer.
        await Task.Yield();
        Speech.Use(new Speech("de", UnitSystem.Metric));
        string[] said = [.. cards.SelectMany(CardSpeech.Fixed).Distinct(StringComparer.Ordinal)];
        Assert.True(said.Length >= 20, $"{said.Length} sentences");
        foreach (string english in said)
        {
            Piece german = CardSpeech.Of(english);
            Assert.False(german.IsEnglish, english);
            Assert.NotEqual(english, german.Text);
            Assert.Equal(Numbers(english), Numbers(german.Text));
        }
    }

    [Fact]
    public async Task WhatTheTextBookDoesNotKnow_StaysEnglish_AndSaysSo()
    {
        // What is spoken holds for the rest of a method that waits, and no longer.
        await Task.Yield();
        Speech.Use(new Speech("de", UnitSystem.Metric));
        Piece own = CardSpeech.Of("Land as the coach showed.");
        Assert.True(own.IsEnglish);
        Assert.Equal("Land as the coach showed.", own.Text);
    }

    private static IEnumerable<string> Numbers(string text) => Number().Matches(text).Select(m => m.Value);

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Number();
}
