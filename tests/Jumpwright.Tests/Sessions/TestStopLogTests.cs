using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.Tests.Sessions;

/// <summary>A proposed test's stop rule held against the log of its trials.</summary>
public class TestStopLogTests
{
    private static readonly TestStop Rule = new(0.25, 10, null, 1, 2);

    private static CompletedItem Trial(
        int number,
        double? heightM,
        double? contactS,
        int faults = 0,
        double? pain = null
    ) =>
        new("a01", new LocalDate(2027, 1, 4), "s", "depth-jump", 1, 1, 1, faults, pain, null, null, 0.3, null)
        {
            Set = number,
            HeightM = heightM,
            ContactTimeS = contactS,
        };

    [Fact]
    public void GoodTrials_FindNothing() =>
        Assert.Null(Logs.TestStop(Rule, [Trial(1, 0.30, 0.2), Trial(2, 0.29, 0.21), Trial(3, null, null)]));

    [Fact]
    public void TrialsAfterTheOneThatStopped_AreSaid()
    {
        ImmutableArray<CompletedItem> trials = [Trial(2, 0.22, 0.2), Trial(1, 0.30, 0.2), Trial(3, 0.3, 0.2)];
        StopFinding found = Logs.TestStop(Rule, trials)!;
        Assert.Equal(2, found.Set);
        Assert.True(found.WentOn);
        Assert.Equal(
            "Test, depth-jump, trial 2: the height fell from 30.0 to 26.0 cm, by more than 10 %, and it went on.",
            found.Sentence
        );
        Assert.False(Logs.TestStop(Rule, trials.Take(2))!.WentOn);
    }

    [Fact]
    public void ContactPastTheCeiling_AFault_AndPain_EachStop()
    {
        Assert.Contains(
            "over the ceiling",
            Logs.TestStop(Rule, [Trial(1, 0.3, 0.26)])!.Sentence,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "1 landing fault was",
            Logs.TestStop(Rule, [Trial(1, 0.3, 0.2, 1)])!.Sentence,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "pain was 3 of 10",
            Logs.TestStop(Rule, [Trial(1, 0.3, 0.2, 0, 3)])!.Sentence,
            StringComparison.Ordinal
        );
    }
}
