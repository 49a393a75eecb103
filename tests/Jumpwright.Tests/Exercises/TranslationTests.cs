using System.Text.RegularExpressions;
using Jumpwright.Exercises;

namespace Jumpwright.Tests.Exercises;

/// <summary>That no translation of the catalogue leaves out, adds or moves what keeps an athlete safe, as far as can be counted.</summary>
public partial class TranslationTests
{
    /// <summary>Names that the German trade uses as they are.</summary>
    private static readonly string[] SameInBoth = ["Snap-down"];

    private static readonly Dictionary<string, string> Counted = new(StringComparer.Ordinal)
    {
        ["two"] = "zwei",
        ["three"] = "drei",
        ["four"] = "vier",
        ["five"] = "fünf",
        ["six"] = "sechs",
        ["seven"] = "sieben",
        ["eight"] = "acht",
        ["ten"] = "zehn",
        ["twenty"] = "zwanzig",
    };

    private static readonly (string English, string German)[] Parts =
    [
        ("half|halve", "(?<!ober)halb"),
        ("quarter", "viertel"),
        ("third", "drittel"),
        ("eighth", "achtel"),
        ("tenth", "zehntel"),
        ("twice", "doppelt|zweimal"),
    ];

    public static TheoryData<string> Ids => [.. Catalogue.Standard.Exercises.Select(e => e.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void German_OfEveryExercise_HasAsManyOfEach(string id)
    {
        (ExerciseWords english, ExerciseWords german) = Both(id);
        Assert.Equal("de", german.Language);
        Assert.Equal(english.Cues.Length, german.Cues.Length);
        Assert.Equal(english.Faults.Length, german.Faults.Length);
        Assert.Equal(english.Cautions.Length, german.Cautions.Length);
        Assert.All(Texts(german), t => Assert.Equal(t.Trim(), t));
        Assert.All(Texts(german), t => Assert.NotEqual("", t));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void German_OfEveryText_HasItsNumbersAndUnits(string id) =>
        Assert.All(Pairs(id), p => Assert.Equal(Numbers(p.English), Numbers(p.German)));

    [Theory]
    [MemberData(nameof(Ids))]
    public void German_OfEveryText_HasItsSpeltOutNumbers(string id)
    {
        Assert.All(Pairs(id), p => Assert.Equal(SpeltOut(p.English), SpeltOutInGerman(p.German)));

        // A name may say a half squat where the English leaves the half to the set-up.
        Assert.All(
            Pairs(id).Skip(1),
            p => Assert.All(Parts, w => Assert.Equal(Times(w.English, p.English), Times(w.German, p.German)))
        );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void German_OfARuleOrCaution_ForbidsAsOften(string id) =>
        Assert.All(Rules(id), p => Assert.Equal(Nots().Count(p.English), NotsInGerman().Count(p.German)));

    [Fact]
    public void German_OfRulesAndCautions_IsTheSameWhereTheyAreAndOnlyThere()
    {
        (string English, string German)[] rules = [.. Ids.Select(i => i.Data).SelectMany(Rules).Distinct()];
        Assert.Equal(rules.Length, rules.DistinctBy(r => r.English).Count());
        Assert.Equal(rules.Length, rules.DistinctBy(r => r.German).Count());
    }

    [Fact]
    public void German_OfNames_IsAnotherForEach() => Assert.Distinct(Ids.Select(i => Both(i.Data).German.Name));

    [Theory]
    [MemberData(nameof(Ids))]
    public void German_OfEveryText_IsNotLeftInEnglish(string id) =>
        Assert.All(
            Pairs(id).Where((p, i) => i > 0 || !SameInBoth.Contains(p.English)),
            p => Assert.NotEqual(p.English, p.German)
        );

    private static (ExerciseWords English, ExerciseWords German) Both(string id)
    {
        Exercise exercise = Catalogue.Standard.Find(id)!;
        return (Wordings.Of(exercise, "en"), Wordings.Of(exercise, "de"));
    }

    /// <summary>The name first.</summary>
    private static IEnumerable<(string English, string German)> Pairs(string id)
    {
        (ExerciseWords english, ExerciseWords german) = Both(id);
        return Texts(english).Zip(Texts(german));
    }

    private static IEnumerable<(string English, string German)> Rules(string id)
    {
        (ExerciseWords english, ExerciseWords german) = Both(id);
        return english.Cautions.Prepend(english.StopRule).Zip(german.Cautions.Prepend(german.StopRule));
    }

    private static IEnumerable<string> Texts(ExerciseWords words) =>
        [
            words.Name,
            words.Purpose,
            words.SetUp,
            .. words.Cues,
            .. words.Faults.SelectMany(f => new[] { f.Seen, f.Fix }),
            words.Progress,
            words.StopRule,
            .. words.Cautions,
        ];

    /// <summary>With the unit behind each, if there is one.</summary>
    private static IEnumerable<string> Numbers(string text) =>
        Number().Matches(text).Select(m => m.Value.Replace(',', '.')).Order(StringComparer.Ordinal);

    private static IEnumerable<string> SpeltOut(string english) =>
        Word()
            .Matches(BothLegs().Replace(english, ""))
            .Select(m => Counted.GetValueOrDefault(m.Value.ToLowerInvariant()))
            .OfType<string>()
            .Order(StringComparer.Ordinal);

    private static IEnumerable<string> SpeltOutInGerman(string german) =>
        Word()
            .Matches(german.ToLowerInvariant().Replace("dreiviertel", "drei viertel", StringComparison.Ordinal))
            .Select(m => m.Value)
            .Where(Counted.ContainsValue)
            .Order(StringComparer.Ordinal);

    private static int Times(string pattern, string text) =>
        Regex.Count(text, pattern, RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1));

    [GeneratedRegex(@"[0-9]+(?:[.,][0-9]+)?(?:°| ?%| ?(?:cm|mm|m|s|kg|min)\b)?", RegexOptions.None, 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"\p{L}+", RegexOptions.None, 1000)]
    private static partial Regex Word();

    /// <summary>German says beidbeinig or both.</summary>
    [GeneratedRegex(@"\btwo[- ](?:feet|foot|legs?)\b|\bon two(?=[,.]|$)", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex BothLegs();

    [GeneratedRegex(@"\b(?:no|not|never|nobody|nothing|none|cannot|bars)\b", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Nots();

    [GeneratedRegex(@"\b(?:nicht|nichts|nie|niemand(?:en)?|keine?[nmrs]?|verbietet)\b", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex NotsInGerman();
}
