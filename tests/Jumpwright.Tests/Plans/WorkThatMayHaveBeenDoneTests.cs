using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Plans.Asking;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Tests.Safety;
using NodaTime;

namespace Jumpwright.Tests.Plans;

/// <summary>
/// A plan made anew in the middle of a week: what was done in it counts, also on the very day, and so does what may have been done.
/// What may have been done never allows more.
/// </summary>
public class WorkThatMayHaveBeenDoneTests
{
    private static readonly LocalDate Monday = new(2027, 1, 4);
    private static readonly LocalDate Wednesday = Monday.PlusDays(2);

    private static readonly Squad Club = new(
        "Club",
        "UTC",
        [new KitCount("plyo-box", 2)],
        [
            new(IsoDayOfWeek.Monday, new LocalTime(17, 0), 45),
            new(IsoDayOfWeek.Wednesday, new LocalTime(17, 0), 45),
            new(IsoDayOfWeek.Friday, new LocalTime(17, 0), 45),
        ],
        [],
        ImmutableDictionary<string, string>.Empty
    );

    private static CompletedItem Hops(LocalDate day, int contacts) =>
        new("a01", day, $"{day:uuuu-MM-dd}-pm", "pogo-hop", 3, contacts / 3, contacts, 0, 0, 0, 5, null, null);

    private static PossibleWork Perhaps(LocalDate day, int contacts) =>
        new("a01", day, $"{day:uuuu-MM-dd}-pm", "pogo-hop", contacts, null);

    private static AthleteRequest From(LocalDate day, History history) =>
        Requests.For(Club, [history], Catalogue.Standard, day, 2).Require().Athletes.Single();

    private static int? Left(AthleteRequest who, Tissue? tissue) =>
        who
            .Caps.Where(c =>
                c.Tissue == tissue
                && (c.LimitId is "weekly-load" or "weekly-growth")
                && !c.SessionIds.Contains("2027-01-11-pm")
            )
            .Min(c => (int?)c.AtMost);

    [Fact]
    public void ASetThatMayHaveBeenDone_TakesFromTheWeekAsIfItWas()
    {
        History well = Patient.Well;
        History done = well with { Completed = [Hops(Monday, 60)] };
        History perhaps = well with { PossiblyDone = [Perhaps(Monday, 60)] };

        Assert.Null(Left(From(Wednesday, well), null));
        Assert.Equal(Left(From(Wednesday, done), null), Left(From(Wednesday, perhaps), null));
        Assert.True(Left(From(Wednesday, perhaps), Tissue.Achilles) < Left(From(Wednesday, well), Tissue.Achilles));
    }

    /// <summary>Nobody knows whether the first rep was done: the tissue waits as long as after all of them.</summary>
    [Fact]
    public void ASetThatMayHaveBeenDone_IsRecoveredFrom()
    {
        History done = Patient.Well with { Completed = [Hops(Monday, 60) with { ExerciseId = "depth-jump" }] };
        History perhaps = Patient.Well with { PossiblyDone = [Perhaps(Monday, 0) with { ExerciseId = "depth-jump" }] };
        ImmutableArray<RecentWork> recent = From(Monday.PlusDays(1), perhaps).Recent;

        Assert.NotEmpty(recent);
        Assert.Equal(From(Monday.PlusDays(1), done).Recent.AsEnumerable(), recent);
    }

    [Fact]
    public void ASetThatMayHaveBeenDone_AllowsTheNextWeekNoMore()
    {
        LocalDate before = Monday.PlusDays(-4);
        History heavy = Patient.Well with { Completed = [Hops(before, 600)] };
        History perhaps = Patient.Well with { PossiblyDone = [Perhaps(before, 600)] };

        int without = Left(From(Monday, Patient.Well), Tissue.Achilles)!.Value;
        Assert.True(Left(From(Monday, heavy), Tissue.Achilles) > without);
        Assert.Equal(without, Left(From(Monday, perhaps), Tissue.Achilles));
    }

    /// <summary>Planned anew on the evening of a session: its contacts were done, so the rest of the week has that many fewer.</summary>
    [Fact]
    public void ASessionThatHasBegun_IsNotPlannedAgain_AndItsContactsAreTakenFromItsWeek()
    {
        AthleteRequest fresh = From(Monday, Patient.Well);
        AthleteRequest begun = From(Monday, Patient.Well with { Completed = [Hops(Monday, 60)] });
        string today = "2027-01-04-pm";

        Assert.Contains(fresh.Menu, m => m.SessionId == today);
        Assert.DoesNotContain(begun.Menu, m => m.SessionId == today);
        Assert.Contains(begun.Menu, m => m.SessionId == "2027-01-08-pm");
        Assert.Equal(fresh.ContactsPerWeekAtMost - 60, Left(begun, null));
        Assert.DoesNotContain(
            From(Monday, Patient.Well with { PossiblyDone = [Perhaps(Monday, 30)] }).Menu,
            m => m.SessionId == today
        );
        // Work that is named for another session closes none.
        Assert.Contains(
            From(Monday, Patient.Well with { Completed = [Hops(Monday, 60) with { SessionId = "school" }] }).Menu,
            m => m.SessionId == today
        );
    }

    /// <summary>What a week may ask of a tissue is asked once: what was done on Monday is no free gift to Wednesday.</summary>
    [Fact]
    public void DoneEarlierInTheWeek_TakesFromWhatTheWeekMayAskOfATissue()
    {
        int always = Left(From(Wednesday, Patient.Well), Tissue.Achilles)!.Value;
        int tier = Catalogue.Standard.Find("pogo-hop")!.Demand[Tissue.Achilles];
        AthleteRequest after = From(Wednesday, Patient.Well with { Completed = [Hops(Monday, 60)] });

        Assert.True(tier > 0);
        Assert.Equal(always - (60 * tier), Left(after, Tissue.Achilles));
    }
}
