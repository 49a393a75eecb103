using System.Text.RegularExpressions;
using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>The core's sentences in the language and units of the page.</summary>
public partial class SpokenSentencesTests
{
    private static readonly string[] InCode =
    [
        .. TemplatesInCode
            .Of(typeof(Sentence).Assembly)
            .Union(TemplatesInCode.Of(typeof(Planning.Planner).Assembly))
            .Union(TemplatesInCode.Of(typeof(Jumpwright.Paper.CardPdf).Assembly))
            .Union(TemplatesInCode.Of(typeof(Jumpwright.Storage.Stores.Store).Assembly))
            .Union(TemplatesInCode.Of(typeof(SpokenSentences).Assembly))
            // What the catalogue says is a template of its own.
            .Union(Catalogue.Standard.Exercises.SelectMany(e => e.Entry).Select(c => c.Said.Template))
            .Union(
                LimitBook
                    .Standard.All.Select(l => l.Id)
                    .Concat(Limits.All.Select(l => l.Id))
                    .Concat(LimitNames.OfRulings)
                    .Select(id => LimitNames.Of(id).Template)
            )
            .Union(LimitBook.Standard.All.Select(l => l.Said.Template))
            .Union(Catalogue.Standard.Exercises.Select(e => e.DemandBasisSaid.Template))
            .Union(PublishedEffects.All.Select(e => Sentence.OfCatalogue(e.Training).Template))
            .Order(StringComparer.Ordinal),
    ];

    [Fact]
    public void EveryTemplateOfTheCode_HasGermanWords()
    {
        Assert.True(InCode.Length > 100, $"{InCode.Length} templates");
        string[] missing = [.. InCode.Where(t => SpokenSentences.TemplateIn("de", t) is null)];
        Assert.True(missing.Length == 0, "No German for:\n" + string.Join('\n', missing));
    }

    [Fact]
    public void NoGermanWords_StandForATemplateThatNobodyMakes() =>
        Assert.Empty(SpokenSentences.Templates("de").Except(InCode, StringComparer.Ordinal));

    [Fact]
    public void EveryGermanTemplate_HasTheSameHoles()
    {
        foreach (string english in SpokenSentences.Templates("de"))
        {
            Assert.Equal((english, Holes(english)), (english, Holes(German(english))));
        }
    }

    [Fact]
    public void EveryGermanTemplate_KeepsNumbersUnitsAndNegations()
    {
        foreach (string english in SpokenSentences.Templates("de"))
        {
            string said = Hole().Replace(english, "#");
            string german = Hole().Replace(German(english), "#");
            Assert.Equal((english, Numbers(said)), (english, Numbers(german)));
            Assert.True(
                !EnglishNo().IsMatch(said) || GermanNo().IsMatch(german),
                $"A negation is lost:\n{english}\n{German(english)}"
            );
            Assert.True(
                !GermanNo().IsMatch(german) || EnglishNo().IsMatch(said),
                $"A negation was added:\n{english}\n{German(english)}"
            );
        }
    }

    [Fact]
    public async Task ASentence_IsSaidInTheLanguageAndUnitsOfThePage()
    {
        await Task.Yield();
        Sentence sentence =
            $"Illness on {new LocalDate(2027, 1, 4)}: no high-intensity work up to {new LocalDate(2027, 1, 11)}.";
        Sentence plain = Sentence.Plain("As somebody wrote it.");
        Speech.Use(new Speech("de", UnitSystem.Metric));
        Assert.Equal(
            new Piece("Krankheit am 4. Jan 2027: keine hochintensiven Übungen bis 11. Jan 2027."),
            SpokenSentences.Of(sentence)
        );
        Assert.Equal(new Piece("As somebody wrote it.", IsEnglish: true), SpokenSentences.Of(plain));
        // One part that has no German words keeps the whole in English.
        Assert.Equal(
            new Piece("Stop when As somebody wrote it..", IsEnglish: true),
            SpokenSentences.Of($"Stop when {plain}.")
        );
        Speech.Use(new Speech("en", UnitSystem.InchPound));
        Assert.Equal("18.1 in or more", SpokenSentences.Text($"{new Length(0.46):0.00 m} or more"));
        Assert.Equal("0.46 m or more", Sentence.Of($"{new Length(0.46):0.00 m} or more").ToString());
    }

    private static string German(string english) => SpokenSentences.TemplateIn("de", english)!;

    /// <summary>Holes and how they are filled; only how their first letter is written may differ.</summary>
    private static string Holes(string template) =>
        string.Join(
            ' ',
            Hole()
                .Matches(template)
                .Select(m => Shape().Replace(m.Value, "}"))
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
        );

    private static string Numbers(string text) =>
        string.Join(' ', Number().Matches(text).Select(m => m.Value.Replace(',', '.')).Order(StringComparer.Ordinal));

    [GeneratedRegex(@"\{\d+(?::[^}]*)?\}")]
    private static partial Regex Hole();

    [GeneratedRegex(":(?:small|capital|open|small open)\\}")]
    private static partial Regex Shape();

    [GeneratedRegex(@"[0-9]+(?:[.,][0-9]+)?")]
    private static partial Regex Number();

    [GeneratedRegex(
        @"\b(?:no|not|none|nobody|nothing|never|neither|nor|without|cannot|unknown|unlicensed|un\w+ed|\w+n't)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex EnglishNo();

    [GeneratedRegex(
        @"\b(?:kein\w*|nicht|nichts|niemand\w*|nie|weder|noch nie|ohne|nein|unbekannt\w*|unlizenziert\w*)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex GermanNo();
}
