using System.Text.Json;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages.Floor;

/// <summary>
/// Pain stops an exercise in the middle of a set: contacts before the stop count, and where nobody says how many they were the set counts
/// for limits as if it had been done, but earns nothing.
/// </summary>
public class BrokenOffTests
{
    private const string Session = "2027-01-04-pm";
    private static readonly LocalDate Day = new(2027, 1, 4);

    [Fact]
    public void StoppedBeforeAnySetWasLogged_AllThatWasPlannedMayHaveBeenDone()
    {
        History history = Read(Pain(6));
        Assert.Empty(history.Completed);
        Assert.Equal(new PossibleWork("a01", Day, Session, "pogo-hop", 30, null), Assert.Single(history.PossiblyDone));
    }

    [Fact]
    public void StoppedAfterALoggedSet_TheNextOneMayHaveBeenDone()
    {
        History history = Read(Set(1), Pain(6));
        Assert.Equal(10, Assert.Single(history.Completed).Contacts);
        Assert.Equal(10, Assert.Single(history.PossiblyDone).Contacts);
    }

    [Fact]
    public void StoppedAfterTheLastSet_NothingMoreCanHaveBeenDone() =>
        Assert.Empty(Read(Set(1), Set(2), Set(3), Pain(6)).PossiblyDone);

    [Theory]
    [InlineData(4, 4, 14)]
    [InlineData(0, 0, 10)]
    public void SaidHowManyRepsWereDone_TheseCount_AndNothingIsLeftOpen(int reps, int contacts, int all)
    {
        History history = Read(Set(1), Pain(6), Set(2, reps, contacts, brokenOff: true));
        Assert.Empty(history.PossiblyDone);
        CompletedItem done = Assert.Single(history.Completed);
        Assert.Equal(all, done.Contacts);
        // What was broken off is no full set: it doesn't help to own anything.
        Assert.Equal((1, 10), (done.Sets, done.Reps));
    }

    [Fact]
    public void BrokenOffBeforeItsFirstRep_IsNoWork_AndThePainStillCloses()
    {
        History history = Read(Pain(6), Set(1, 0, 0, brokenOff: true));
        Assert.Empty(history.Completed);
        Assert.Empty(history.PossiblyDone);
        Assert.Equal(6, Assert.Single(history.Symptoms).Score);
    }

    [Fact]
    public void OnlyBrokenOffSets_AreOneSetOfTheRepsThatWereDone()
    {
        CompletedItem done = Assert.Single(Read(Pain(6), Set(1, 3, 3, brokenOff: true)).Completed);
        Assert.Equal((1, 3, 3, 6.0), (done.Sets, done.Reps, done.Contacts, done.PainDuring!.Value));
    }

    /// <summary>Pain up to which work goes on breaks nothing off; a new place does, however little it hurts.</summary>
    [Fact]
    public void OnlyAPainThatStops_BreaksOff()
    {
        Assert.Empty(Read(Set(1), Pain(2)).PossiblyDone);
        Assert.Single(Read(Set(1), Pain(3)).PossiblyDone);
        Assert.Single(Read(Set(1), Pain(1, fresh: true)).PossiblyDone);
        Assert.Single(Read(Set(1), Pain(null, fresh: true)).PossiblyDone);
    }

    [Fact]
    public void APainTakenBackThatDay_BrokeNothingOff()
    {
        JournalEntry pain = Pain(6);
        Assert.Empty(
            Read(Set(1), pain, Entry(EntryKinds.PainWithdrawn, new PainWithdrawnEntry(pain.Id, "Sam"))).PossiblyDone
        );
    }

    /// <summary>The set that was logged on one tablet and the pain on another come together in any order.</summary>
    [Fact]
    public void TwoTablets_SayTheSameInAnyOrder()
    {
        JournalEntry[] entries = [Set(1), Pain(6), Set(2)];
        Assert.Equal(Read(entries).PossiblyDone.AsEnumerable(), Read([.. entries.Reverse()]).PossiblyDone);
        Assert.Equal(10, Assert.Single(Read(entries).PossiblyDone).Contacts);
    }

    /// <summary>A tablet of before did not say what was planned: that it was begun asks for recovery, and no contacts are made up.</summary>
    [Fact]
    public void WithoutWhatWasPlanned_OnlyThatItWasBegunIsKnown()
    {
        Assert.Equal(
            0,
            Assert
                .Single(Read(Entry(EntryKinds.Pain, new PainEntry(6, "during", "pogo-hop", null, null))).PossiblyDone)
                .Contacts
        );
        Assert.Empty(
            Read(Set(1), Entry(EntryKinds.Pain, new PainEntry(6, "during", "pogo-hop", null, null))).PossiblyDone
        );
    }

    [Fact]
    public void ATrialOfATest_IsBrokenOffByItself()
    {
        History history = Read(Set(1), Set(2), Set(3), Pain(6, test: "drop height"));
        Assert.Equal(4, Assert.Single(history.PossiblyDone).Contacts);
    }

    /// <summary>Whoever wrote a row of it into completed.csv looked back on it.</summary>
    [Fact]
    public void ARowInTheTable_SaysHowMuchItWas()
    {
        CompletedItem row = new("a01", Day, Session, "pogo-hop", 2, 10, 17, 0, null, null, null, null, null);
        Assert.Empty(
            JournalReading.Of(Blank with { Completed = [row] }, [Set(1), Pain(6)], DateTimeZone.Utc).PossiblyDone
        );
    }

    private static readonly History Blank = new(
        new Athlete("a01", "Ada", new LocalDate(2000, 6, 1), 70, 1.75, null, TrainingLevel.Advanced, null, null),
        [],
        [],
        [],
        [],
        []
    );

    private static History Read(params JournalEntry[] entries) => JournalReading.Of(Blank, entries, DateTimeZone.Utc);

    private static JournalEntry Pain(double? score, bool fresh = false, string? test = null) =>
        Entry(
            EntryKinds.Pain,
            new PainEntry(score, "during", "pogo-hop", null, null)
            {
                SiteNew = fresh,
                Work = test is null ? new WorkEntry(3, 10, null, 2, null) : new WorkEntry(4, 1, null, 2, test),
            }
        );

    private static JournalEntry Set(int number, int reps = 10, int contacts = 10, bool brokenOff = false) =>
        Entry(
            EntryKinds.Set,
            new SetEntry("pogo-hop", number, reps, contacts, null, false, null) { BrokenOff = brokenOff }
        );

    private static JournalEntry Entry(string kind, object data) =>
        new(
            Guid.NewGuid().ToString(),
            kind,
            "a01",
            Session,
            Instant.FromUtc(2027, 1, 4, 17, 0),
            "Left",
            JsonSerializer.Serialize(data)
        );
}
