using System.Text.RegularExpressions;
using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>Lengths and masses that stand in prose that ships, for who reads inches and pounds.</summary>
public partial class ReadersUnitsTests
{
    [Theory]
    [InlineData("a low box of 20-30 cm, the other", "a low box of 7.8-11.8 in, the other")]
    [InlineData("at 10 then 15 then 20 cm.", "at 3.9 then 5.9 then 7.8 in.")]
    [InlineData("from 10, then 15, 20 and 25 cm.", "from 3.9, then 5.9, 7.8 and 9.8 in.")]
    [InlineData(
        "Over 100 kg or mass unknown: no drop above 0.46 m.",
        "Over 220.5 lb or mass unknown: no drop above 18.1 in."
    )]
    // What is no length stays.
    [InlineData("at 3 m/s, 5 min, 4 kg/m, 1.2 m²", "at 3 m/s, 5 min, 4 kg/m, 1.2 m²")]
    public async Task ALengthInProse_IsWrittenInInches(string metric, string inches)
    {
        await Task.Yield();
        Speech.Use(new Speech("en", UnitSystem.InchPound));
        Assert.Equal(inches, ReadersUnits.In(metric));
        Speech.Use(new Speech("en", UnitSystem.Metric));
        Assert.Equal(metric, ReadersUnits.In(metric));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public async Task NoExerciseThatShips_SpeaksMetricToWhoReadsInches(string language)
    {
        await Task.Yield();
        Speech.Use(new Speech(language, UnitSystem.InchPound));
        string[] said =
        [
            .. Catalogue.Standard.Exercises.SelectMany(e =>
                SpokenExercises.Of(e) is var w
                    ? (string[])
                        [
                            w.Purpose,
                            w.SetUp,
                            w.Progress,
                            w.StopRule,
                            .. w.Cues,
                            .. w.Cautions,
                            .. w.Faults.SelectMany(f => new[] { f.Seen, f.Fix }),
                            .. e.Entry.Select(c => SpokenSentences.Text(c.Said)),
                        ]
                    : []
            ),
        ];
        Assert.DoesNotContain(said, s => Metric().IsMatch(s));
        Assert.True(said.Count(s => Inches().IsMatch(s)) > 12);
    }

    [Fact]
    public async Task WhatASquadWrote_StaysAsItWroteIt()
    {
        await Task.Yield();
        Exercise own = Catalogue.Standard.Find("drop-landing")! with { SetUp = "Our own box of 30 cm." };
        Speech.Use(new Speech("en", UnitSystem.InchPound));
        Assert.Equal("Our own box of 30 cm.", SpokenExercises.Of(own).SetUp);
        Assert.Contains("11.8 in", SpokenExercises.Of(Catalogue.Standard.Find("drop-landing")!).SetUp);
    }

    [Theory]
    [InlineData(0.30, "11.8 in")]
    [InlineData(0.35, "13.7 in")]
    [InlineData(0.4445, "17.5 in")]
    public async Task OneBox_HasOneHeight_InASentence_InATable_AndInProse(double metres, string inches)
    {
        await Task.Yield();
        Speech.Use(new Speech("en", UnitSystem.InchPound));
        Assert.Equal(inches, UnitWords.Spoken(100 * metres, "cm"));
        Assert.Equal($"From {inches}.", SpokenSentences.Text(Sentence.Of($"From {new Length(metres):0 cm}.")));
        Assert.Equal(
            $"a box of {inches}",
            ReadersUnits.In(FormattableString.Invariant($"a box of {100 * metres:0.##} cm"))
        );
    }

    [GeneratedRegex(@"\d (?:cm|mm|m|kg)\b(?!/)")]
    private static partial Regex Metric();

    [GeneratedRegex(@"\d (?:in|Zoll|lb)\b")]
    private static partial Regex Inches();
}
