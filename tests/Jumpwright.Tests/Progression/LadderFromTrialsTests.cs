using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Tests.Progression;

/// <summary>The seam between stations: measured trials, through the profile, to a verdict on the ladder.</summary>
public class LadderFromTrialsTests
{
    private static readonly LocalDate Today = AthleteStory.Today;

    [Fact]
    public void ThreeQuickDropJumps_ThroughTheProfile_MeetTheContactCriterion()
    {
        RungReason reason = Contact(Trials(JumpTask.DropJump, 0.190, 0.196, 0.201));
        Assert.Equal(CriterionVerdict.Met, reason.Verdict);
        Assert.InRange(reason.Probability!.Value, 0.90, 1);
        Assert.Equal(Today.PlusDays(-5), reason.Date);
    }

    [Fact]
    public void ThreeSlowDropJumps_ThroughTheProfile_DoNotMeetIt() =>
        Assert.Equal(CriterionVerdict.NotMet, Contact(Trials(JumpTask.DropJump, 0.310, 0.322, 0.316)).Verdict);

    [Fact]
    public void QuickHops_DoNotStandForADropJump() =>
        Assert.Equal(CriterionVerdict.NotTested, Contact(Trials(JumpTask.RepeatedHops, 0.180, 0.182, 0.179)).Verdict);

    [Fact]
    public void DoubtfulContacts_AreNotDecidedFrom() =>
        Assert.Equal(
            CriterionVerdict.NotTested,
            Contact(Trials(JumpTask.DropJump, ["contact_time_s"], 0.190, 0.196)).Verdict
        );

    private static RungReason Contact(ImmutableArray<MeasuredTrial> trials)
    {
        var athlete = new Athlete(
            "a01",
            "Ada",
            new LocalDate(2001, 5, 2),
            70,
            1.75,
            null,
            TrainingLevel.Advanced,
            null,
            null
        );
        var history = new History(athlete, trials, [], [], [], []);
        Profile profile = Profiling.Of(history, Today);
        return Ladders
            .For(profile, history, Catalogue.Standard, Today, LadderOptions.Default, [])
            .Find("depth-jump")!
            .Reasons.Single(r => r.CriterionId == "drop-jump-contact");
    }

    private static ImmutableArray<MeasuredTrial> Trials(JumpTask task, params double[] contacts) =>
        Trials(task, [], contacts);

    private static ImmutableArray<MeasuredTrial> Trials(JumpTask task, string[] doubtful, params double[] contacts) =>
        [
            .. contacts.Select(
                (contact, i) =>
                    new MeasuredTrial(
                        "a01",
                        Today.PlusDays(-5),
                        new Trial(
                            1,
                            task,
                            new TrialEvents(),
                            [new Measure(MeasureNames.ContactTime, contact, Unit.Second, 0.002, "force threshold")],
                            [],
                            [],
                            [.. doubtful]
                        ),
                        new RecordingLabels("a01", Today.PlusDays(-5), task, DropHeightM: 0.20),
                        Device.ForcePlate,
                        $"recordings/{i}.csv",
                        "00"
                    )
            ),
        ];
}
