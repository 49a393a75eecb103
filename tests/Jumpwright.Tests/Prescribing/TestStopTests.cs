using Jumpwright.Prescribing.Proposals;

namespace Jumpwright.Tests.Prescribing;

/// <summary>When a test stops: the rule is data, held against the trials so far.</summary>
public class TestStopTests
{
    private static readonly TestStop Rule = new(0.25, 10, 0.30, 1, 2);

    [Fact]
    public void GoodTrials_GoOn()
    {
        Assert.False(Rule.After([]).Stops);
        Assert.False(Rule.After([new(0.31, 0.20), new(0.30, 0.21), new(0.29, 0.20)]).Stops);
    }

    [Fact]
    public void ContactPastTheCeiling_Stops()
    {
        StopVerdict verdict = Rule.After([new(0.31, 0.26)]);
        Assert.True(verdict.Stops);
        Assert.Contains("260 ms", verdict.Because, StringComparison.Ordinal);

        // At the ceiling is under it; one long contact among short ones is scatter.
        Assert.False(Rule.After([new(0.31, 0.25)]).Stops);
        Assert.False(Rule.After([new(0.31, 0.20), new(0.31, 0.26)]).Stops);
    }

    [Fact]
    public void ReboundMoreThanTenPerCentBelowTheEasierStep_Stops()
    {
        Assert.True(Rule.After([new(0.269, 0.2)]).Stops);
        Assert.False(Rule.After([new(0.271, 0.2)]).Stops);
        Assert.True(Rule.After([new(0.29, 0.2), new(0.24, 0.2)]).Stops);
    }

    [Fact]
    public void NoEasierStep_CountsFromTheFirstTrial()
    {
        TestStop rule = Rule with { ReferenceHeightM = null };
        Assert.False(rule.After([new(0.30, 0.2)]).Stops);
        Assert.True(rule.After([new(0.30, 0.2), new(0.22, 0.2)]).Stops);
    }

    [Fact]
    public void OneLandingFault_Pain_OrANewPlace_StopAtOnce()
    {
        Assert.True(Rule.After([new(0.31, 0.2), new(0.31, 0.2, LandingFaults: 1)]).Stops);
        Assert.False(Rule.After([new(0.31, 0.2, Pain: 2)]).Stops);
        Assert.True(Rule.After([new(0.31, 0.2, Pain: 3)]).Stops);
        Assert.True(Rule.After([new(0.31, 0.2, PainSiteNew: true)]).Stops);
    }

    [Fact]
    public void Words_NameEveryNumberOfTheRule()
    {
        string words = string.Join("; ", Rule.Words);
        Assert.Equal(
            "contact is longer than 250 ms; the height falls by more than 10 % below 30.0 cm; a landing fault is seen; pain is above 2 of 10, or anywhere new",
            words
        );
    }
}
