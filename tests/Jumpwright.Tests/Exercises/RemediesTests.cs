using System.Text.RegularExpressions;
using Jumpwright.Exercises;

namespace Jumpwright.Tests.Exercises;

/// <summary>A remedy that sends to another exercise calls it as the catalogue does, so that it is found on the page.</summary>
public partial class RemediesTests
{
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void WhatARemedyGoesBackTo_IsAnotherExerciseOfTheCatalogue(string language)
    {
        int sent = 0;
        foreach (Exercise exercise in Catalogue.Standard.Exercises)
        {
            foreach (Fault fault in Wordings.Of(exercise, language).Faults)
            {
                if (Back(language).Match(fault.Fix) is not { Success: true } match)
                {
                    continue;
                }

                sent++;
                string[] said = [.. Words(match.Groups["what"].Value)];
                Assert.True(
                    Catalogue.Standard.Exercises.Any(e =>
                        e.Id != exercise.Id && said.All(Words(Wordings.Of(e, language).Name).Contains)
                    ),
                    $"{exercise.Id}: '{fault.Fix}' names no other exercise"
                );
            }
        }

        Assert.True(sent >= 15, $"{sent} remedies");
    }

    /// <summary>The words that name it, without how many they are and in which case they stand (Sprung, Sprünge).</summary>
    private static IEnumerable<string> Words(string name) =>
        Word()
            .Matches(name.ToLowerInvariant())
            .Select(m => Ending().Replace(m.Value.Replace('ü', 'u'), ""))
            .Where(w => w is not ("the" or "to" or "a" or "dem" or "der" or "den" or "zur" or "zum"));

    private static Regex Back(string language) => language == "de" ? German() : English();

    [GeneratedRegex(@"\b[Bb]ack to (?:the )?(?<what>[^,;.]+?)(?= for a |[,;.])")]
    private static partial Regex English();

    [GeneratedRegex(@"\b[Zz]urück zu[mr]? (?<what>[^,;.]+)")]
    private static partial Regex German();

    [GeneratedRegex(@"[\p{L}-]+")]
    private static partial Regex Word();

    [GeneratedRegex("(?:en|er|em|es|e|n|s)+$")]
    private static partial Regex Ending();
}
