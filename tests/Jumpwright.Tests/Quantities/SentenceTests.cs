using System.Text.Json;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Tests.Quantities;

/// <summary>A sentence is a template and what fills it; as a string it is English in metres and kilograms.</summary>
public class SentenceTests
{
    private static readonly LocalDate Day = new(2027, 1, 4);

    [Fact]
    public void AnInterpolatedString_BecomesATemplateWithNumberedHoles()
    {
        Sentence sentence = $"Illness on {Day}: {2.5:0.0} of {10} {{or more}}.";
        Assert.Equal("Illness on {0}: {1:0.0} of {2} {{or more}}.", sentence.Template);
        Assert.Equal([Day, 2.5, 10], sentence.Arguments);
        Assert.Equal("Illness on 4 Jan 2027: 2.5 of 10 {or more}.", sentence.ToString());
    }

    [Fact]
    public void ADayOfAFile_IsWrittenAsFilesDo() =>
        Assert.Equal("the week of 2027-01-04", Sentence.Of($"the week of {Day:uuuu-MM-dd}").ToString());

    [Theory]
    [InlineData(UnitSystem.Metric, "46 cm", "0.46 m", "46")]
    [InlineData(UnitSystem.InchPound, "18.1 in", "18.1 in", "18.1")]
    public void ALength_IsWrittenInTheUnitsOfWhoeverReadsIt(UnitSystem units, string cm, string m, string alone)
    {
        Length height = new(0.46);
        Assert.Equal(cm, height.ToString("0 cm", units));
        Assert.Equal(m, height.ToString("0.00 m", units));
        Assert.Equal(alone, height.ToString("0 (cm)", units));
    }

    [Fact]
    public void AMass_IsWrittenInPoundsToo()
    {
        Assert.Equal("66.5 kg", new Mass(66.5).ToString("0.# kg", UnitSystem.Metric));
        Assert.Equal("146.6 lb", new Mass(66.5).ToString("0.# kg", UnitSystem.InchPound));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("0.0")]
    [InlineData("0 kg")]
    public void ALengthWithoutAUnitOfLength_IsRefused(string? format) =>
        Assert.Throws<FormatException>(() => new Length(1).ToString(format, UnitSystem.Metric));

    [Fact]
    public void APart_IsShapedByWhatTheWholeAsksFor()
    {
        Sentence part = $"Sore: only low work.";
        Assert.Equal("not now: Sore: only low work", Sentence.Of($"not now: {part:open}").ToString());
        Assert.Equal("First: sore: only low work.", Sentence.Of($"First: {part:small}").ToString());
        Assert.Equal("Ten hops.", Sentence.Of($"{Sentence.Of($"ten hops"):capital}.").ToString());
    }

    [Fact]
    public void Sentences_AreEqualByWhatTheySay_AndAlikeByTheirTemplate()
    {
        Sentence one = $"{2} of {3}";
        Sentence same = $"{2} of {3}";
        Sentence other = $"{1} of {3}";
        Assert.Equal(one, same);
        Assert.NotEqual(one, other);
        Assert.True(one.IsLike(other));
        Assert.False(one.IsLike(Sentence.Of($"{2} out of {3}")));
        Assert.False(Sentence.Plain("2 of 3").IsLike(one));
        Assert.Equal(one, Sentence.Plain("2 of 3"));
    }

    [Fact]
    public void Several_StandInARow()
    {
        Assert.Equal("a; b; c", Sentence.Join("; ", [$"a", $"b", $"c"]).ToString());
        Assert.Equal("", Sentence.Join("; ", []).ToString());
    }

    [Fact]
    public void InAFile_ASentenceIsItsEnglish_AndComesBackAsWords()
    {
        Sentence sentence = $"No drop above {new Length(0.46):0.00 m}.";
        string json = JsonSerializer.Serialize(sentence);
        Assert.Equal("\"No drop above 0.46 m.\"", json);
        Sentence back = JsonSerializer.Deserialize<Sentence>(json)!;
        Assert.True(back.IsPlain);
        Assert.Equal(sentence, back);
    }

    [Fact]
    public void WordsWithBraces_StayAsTheyAre() => Assert.Equal("a {0} b", Sentence.Plain("a {0} b").ToString());

    [Fact]
    public void ASentenceThatWasRead_IsNotWrittenOn()
    {
        Sentence sentence = $"said";
        _ = sentence.ToString();
        Assert.Throws<InvalidOperationException>(() => sentence.AppendLiteral(" more"));
    }
}
