using System.Text.Json;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages.Floor;

/// <summary>Pain said on the floor reaches the rules of safety, with or without a set, with or without a place.</summary>
public class FloorPainTests
{
    private static readonly LocalDate Day = new(2027, 1, 4);

    [Theory]
    [InlineData("rest", null)]
    [InlineData("night", null)]
    [InlineData("after", null)]
    [InlineData("during", "pogo-hop")]
    public void WithoutASetOrAPlace_ClosesImpact(string when, string? exercise)
    {
        History history = Read(Pain(6, when, exercise));
        SymptomReport felt = Assert.Single(history.Symptoms);
        Assert.Equal(PainEntry.PlaceNotSaid, felt.Site);
        Assert.Contains(
            SafetyRules.For(history, Day),
            r => r.Effect is TierAtMost { Tissue: Tissue.Bone, Tier: 0 } or NothingPlanned
        );
    }

    [Fact]
    public void AtALoggedSet_IsCarriedByTheWorkDone()
    {
        History history = Read(Pain(6, "during", "pogo-hop"), Set("pogo-hop"));
        Assert.Empty(history.Symptoms);
        Assert.Equal(6, Assert.Single(history.Completed).PainDuring);
        Assert.Contains(SafetyRules.For(history, Day), r => r.Effect is NothingPlanned);
    }

    [Fact]
    public void OfZeroWithoutAPlace_OpensNothing() => Assert.Empty(Read(Pain(0, "rest", null)).Symptoms);

    private static History Read(params JournalEntry[] entries) =>
        JournalReading.Of(
            new History(
                new Athlete(
                    "a01",
                    "Ada",
                    new LocalDate(2000, 6, 1),
                    70,
                    1.75,
                    null,
                    TrainingLevel.Advanced,
                    null,
                    null
                ),
                [],
                [],
                [],
                [],
                []
            ),
            entries,
            DateTimeZone.Utc
        );

    private static JournalEntry Pain(double score, string when, string? exercise) =>
        Entry(EntryKinds.Pain, new PainEntry(score, when, exercise, null, null));

    private static JournalEntry Set(string exercise) =>
        Entry(
            EntryKinds.Set,
            new
            {
                exercise,
                set = 1,
                reps = 10,
                contacts = 10,
                undone = false,
            }
        );

    private static JournalEntry Entry(string kind, object data) =>
        new(
            Guid.NewGuid().ToString(),
            kind,
            "a01",
            "2027-01-04-pm",
            Instant.FromUtc(2027, 1, 4, 17, 0),
            "Left",
            JsonSerializer.Serialize(data)
        );
}
