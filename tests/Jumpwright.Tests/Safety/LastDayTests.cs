using Jumpwright.Athletes;
using Jumpwright.Safety;

namespace Jumpwright.Tests.Safety;

/// <summary>A last day of a restriction is not the end of what holds an athlete back: the sentences say what comes after it.</summary>
public class LastDayTests
{
    private static string[] Of(History history) =>
        [.. SafetyRules.For(history, Patient.Today).Select(r => r.Because.ToString())];

    [Fact]
    public void RestrictionWithALastDay_SaysThatNothingIsPlannedAfterIt()
    {
        string[] said = Of(Patient.Well.Restricted("snap-down", untilInDays: 27));
        Assert.Contains(
            said,
            s =>
                s.EndsWith(
                    "After 31 Jan 2027 nothing is planned until a new word is written.",
                    StringComparison.Ordinal
                )
        );
        Assert.Contains(
            Of(Patient.Well.Restricted("snap-down", untilInDays: null)),
            s => s.EndsWith("Only a new word from them changes it.", StringComparison.Ordinal)
        );
    }

    /// <summary>The word has a last day, the rule ends with the discharge: both in one sentence.</summary>
    [Fact]
    public void AfterAnOperation_TheWordsLastDayAndTheRulesEnd_AreToldApart() =>
        Assert.Contains(
            Of(
                Patient
                    .Well.Operated(Patient.Today.PlusDays(-60))
                    .Restricted("snap-down", untilInDays: 27, site: "knee", side: Side.Left)
            ),
            s =>
                s.EndsWith(
                    "That word holds until 31 Jan 2027; after it nothing is planned without a new one. This rule ends only once a licensed person has written that they are discharged.",
                    StringComparison.Ordinal
                )
        );
}
