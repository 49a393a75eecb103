using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Prescribing;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Tests.Athletes;
using Jumpwright.Tests.Safety;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Prescribing;

/// <summary>What was tested against a written word is told, not hidden.</summary>
public class TestsInsideRestrictionsTests
{
    private static History Tested(History history, JumpTask task, int daysAgo) =>
        new Story(history).Jumped(task, [(MeasureNames.JumpHeight, 0.22, 0.01)], daysAgo).History;

    private static Sentence[] Of(History history) =>
        [.. TestsInsideRestrictions.Of(history, Catalogue.Standard, Story.Today)];

    /// <summary>Only snap-downs are allowed since five days ago.</summary>
    private static History Restricted => Patient.Well.Restricted("snap-down", fromDaysAgo: 5);

    [Fact]
    public void JumpThatWasNotAllowedThatDay_IsTold()
    {
        Sentence said = Assert.Single(Of(Tested(Restricted, JumpTask.CountermovementJump, 3)));
        Assert.StartsWith("Tested on 1 Jan 2027 all the same: countermovement jump.", said, StringComparison.Ordinal);
        Assert.Contains("allows only: snap down", said, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatWasAllowed_OrCameBefore_OrIsLongPast_IsNot()
    {
        Assert.Empty(Of(Tested(Restricted, JumpTask.SnapDown, 3)));
        Assert.Empty(Of(Tested(Restricted, JumpTask.CountermovementJump, 6)));
        Assert.Empty(Of(Tested(Patient.Well, JumpTask.CountermovementJump, 3)));
        Assert.Empty(
            Of(Tested(Patient.Well.Restricted("snap-down", fromDaysAgo: 60), JumpTask.CountermovementJump, 43))
        );
    }

    /// <summary>A test by hand that is jumped counts too, and several of one day are told in one sentence.</summary>
    [Fact]
    public void LandingScreen_IsToldWithTheJumpsOfThatDay()
    {
        History history = Tested(Restricted, JumpTask.CountermovementJump, 3);
        Sentence said = Assert.Single(Of(new Story(history).Screened("landing-screen", 3).History));
        Assert.Contains("countermovement jump, low drop landing", said, StringComparison.Ordinal);
    }

    /// <summary>After an operation nothing is allowed before somebody has written it.</summary>
    [Fact]
    public void AfterAnOperation_WithoutAWord_IsTold() =>
        Assert.Contains(
            "no written restriction in force",
            Assert.Single(
                Of(Tested(Patient.Well.Operated(Story.Today.PlusDays(-60)), JumpTask.CountermovementJump, 3))
            ),
            StringComparison.Ordinal
        );
}
