using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Tests.Progression;

/// <summary>A condition says what is needed: never so that somebody is said to own what they don't, or a fault is said to be wanted.</summary>
public class NeededTests
{
    private static readonly AthleteStory Faulty = new AthleteStory().Did("low-drop-landing", 2, faults: 3);
    private static readonly Source House = Bibliography.Get("house-rule");

    [Fact]
    public void ToOwnAnotherExercise_IsSaidAsNeeded_ByItsName()
    {
        int asked = 0;
        foreach (EntryCriterion criterion in Catalogue.Standard.Exercises.SelectMany(e => e.Entry))
        {
            if (criterion.OwnedExercise is not { } id)
            {
                continue;
            }

            asked++;
            Assert.Equal($"To be owned first: {Small(Catalogue.Standard.Find(id)!.Name)}.", criterion.Text);
        }

        Assert.True(asked > 50, $"{asked} such conditions");
    }

    [Fact]
    public void Faults_AreWhyItIsNotOwned_AndNotWhatIsWished()
    {
        RungReason needed = Faulty.Reason("drop-landing", "owns-low-drop-landing");
        Assert.Contains(
            "Not met, because of 3 landing faults on 2 Jan 2027: ",
            needed.Sentence,
            StringComparison.Ordinal
        );
        Assert.EndsWith(": 0 of 2 clean sessions since then.", needed.Sentence, StringComparison.Ordinal);
    }

    /// <summary>What closes a step is a ruling, a hold or time off; the rest says what is needed and what is known of it.</summary>
    [Fact]
    public void WhatCloses_IsToldFromWhatIsNeeded()
    {
        Assert.True(Faulty.Reason("depth-jump", "landing-hold").Closes);
        Assert.False(Faulty.Reason("drop-landing", "owns-low-drop-landing").Closes);
    }

    /// <summary>Two rulings of the same words are two rulings: a test waits for the one that forbids it.</summary>
    [Fact]
    public void ATest_WaitsForItsRuling_NotForOneThatSaysTheSame()
    {
        var tendon = new Ruling("tendon-pain", new NoHighIntensity(), $"Sore.", House);
        var joint = new Ruling("joint-pain", new NoHighIntensity(), $"Sore.", House);
        Sentence waits = CriterionJudge.Waits(tendon);
        Assert.True(Waiting.For(tendon, waits));
        Assert.False(Waiting.For(joint, waits));
        // Words alone are no reason.
        Assert.False(Waiting.For(tendon, Sentence.Of($"not now: Sore")));
        Assert.False(Waiting.For(tendon, null));
    }

    private static string Small(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
