using Jumpwright.Athletes;
using Jumpwright.Safety;
using Jumpwright.Storage.Folders;
using NodaTime;

namespace Jumpwright.Tests.Outside.Storage.Folders;

/// <summary>What the reader closes, the safety rules keep closed: the two must agree on the word that nobody understands.</summary>
public class ClosuresReachSafetyTests
{
    private static readonly LocalDate Day = new(2027, 1, 4);

    [Theory]
    [InlineData(SquadTables.Symptoms, FolderText.SymptomsHeader, "a01,yesterday,knee,left,,,swelling,rest,,")]
    [InlineData(
        SquadTables.Restrictions,
        FolderText.RestrictionsHeader,
        "a01,2026-13-01,,knee,left,,jumps,,Dr Roy,surgeon,"
    )]
    [InlineData(SquadTables.Completed, FolderText.CompletedHeader, "a01,tomorrow,s1,pogo-hops,3,10,30,0,0,0,5,,")]
    public void RowThatNobodyCanRead_ForbidsEverythingToItsAthlete_AndSaysWhomToAsk(
        string file,
        string header,
        string row
    )
    {
        SquadFolder folder = FolderText.Read((file, header + row + "\n"));

        Ruling[] closed =
        [
            .. SafetyRules
                .For(HistoryOf(folder, "a01"), Day)
                .Where(r =>
                    r.Effect is NothingPlanned { WhomToAsk: var whom }
                    && whom.ToString().Contains("whoever keeps " + file, StringComparison.Ordinal)
                ),
        ];

        Assert.NotEmpty(closed);
        Assert.DoesNotContain(
            SafetyRules.For(HistoryOf(folder, "a02"), Day),
            r => r.Because.ToString().Contains("whoever keeps", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void AthleteWhoseRowIsBroken_IsPlannedNothing()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Athletes,
                FolderText.AthletesHeader + "a01,Ada,2000-05-01,female,64,5,1.72,volleyball,advanced,,,,\n"
            )
        );

        Assert.Contains(SafetyRules.For(HistoryOf(folder, "a01"), Day), r => r.Effect is NothingPlanned);
    }

    private static History HistoryOf(SquadFolder folder, string id) =>
        new(
            folder.Athletes.Single(a => a.Id == id),
            [],
            [.. folder.Screens.Where(s => s.AthleteId == id)],
            [.. folder.Symptoms.Where(s => s.AthleteId == id)],
            [.. folder.Restrictions.Where(s => s.AthleteId == id)],
            [.. folder.Completed.Where(s => s.AthleteId == id)]
        );
}
