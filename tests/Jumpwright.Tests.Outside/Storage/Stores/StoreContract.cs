using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using Jumpwright.Tests.Outside.Storage.Folders;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>What every store must do, whatever keeps it.</summary>
public abstract class StoreContract : IDisposable
{
    private readonly SquadOnDisk _squad = new(recordings: 15);
    private Store? _store;

    private Store Store => _store ??= New();

    public void Dispose()
    {
        _store?.Dispose();
        _squad.Dispose();
        Clean();
        GC.SuppressFinalize(this);
    }

    protected abstract Store New();

    protected abstract void Clean();

    [Fact]
    public void Import_OfASquad_GivesBackWhatTheFolderSays()
    {
        SquadFolder folder = SquadFolder.Read(_squad.Path).Require();

        Import();
        StoredSquad stored = Store.Load().Require();

        Assert.Equal(folder.Squad.Name, stored.Squad.Name);
        Assert.Equal(folder.Squad.TimeZone, stored.Squad.TimeZone);
        Assert.Equal(folder.Squad.Kit, stored.Squad.Kit);
        Assert.Equal(folder.Squad.Windows, stored.Squad.Windows);
        Assert.Equal(folder.Squad.Practices, stored.Squad.Practices);
        Assert.Equal(folder.Squad.Fixtures, stored.Squad.Fixtures);
        Assert.Equal(folder.Squad.Policy.AsEnumerable(), stored.Squad.Policy.AsEnumerable());
        Assert.Equal(folder.Athletes, stored.Histories.Select(h => h.Athlete));
        Assert.Equal(folder.Screens, stored.Histories.SelectMany(h => h.Screens));
        Assert.Equal(folder.Symptoms, stored.Histories.SelectMany(h => h.Symptoms));
        Assert.Equal(folder.Completed, stored.Histories.SelectMany(h => h.Completed));
        Restriction restriction = Assert.Single(stored.Histories.SelectMany(h => h.Restrictions));
        Assert.Equal(["snap-down"], restriction.Allowed);
        Assert.Equal(["depth-jump"], restriction.Forbidden);
        Assert.Equal(
            folder.Restrictions[0] with
            {
                Allowed = [],
                Forbidden = [],
            },
            restriction with
            {
                Allowed = [],
                Forbidden = [],
            }
        );
        Assert.Empty(stored.Problems);
    }

    [Fact]
    public void Import_OfRecordings_GivesBackTrialsAsTheyWereMeasured()
    {
        Import();

        byte[] bytes = Encoding.UTF8.GetBytes(_squad.Read("recordings/r001.csv"));
        MeasuredRecording expected = FakeMeasuring.Measure(bytes, new RecordingLabels("a01"));
        MeasuredTrial[] stored = Store.TrialsOf("a01").Where(t => t.File == "recordings/r001.csv").ToArray();

        Assert.Equal([1, 2], stored.Select(t => t.Trial.Number));
        foreach ((MeasuredTrial s, Trials.Trial e) in stored.Zip(expected.Trials.Require()))
        {
            Assert.Equal(e.Events, s.Trial.Events);
            Assert.Equal(e.Measures, s.Trial.Measures);
            Assert.Equal(e.Contacts, s.Trial.Contacts);
            Assert.Equal(e.Warnings, s.Trial.Warnings);
            Assert.Equal(e.Doubtful, s.Trial.Doubtful);
            Assert.Equal(new LocalDate(2027, 1, 2), s.Date);
            Assert.Equal(Device.TwoForcePlates, s.Device);
            Assert.Equal(JumpTask.CountermovementJump, s.Labels.Task);
            Assert.Equal(bytes, Store.RawBytes(s.Sha256).Require().ToArray());
        }
    }

    [Fact]
    public void Import_MeasuredByTheCore_GivesBackTheCoresOwnTrials()
    {
        ImportReport report = Store.Import(_squad.Path).Require();

        Assert.Equal(["recordings/r006.csv", "recordings/r013.csv"], report.Refused.Select(r => r.File));
        MeasuredTrial[] trials = [.. Store.Load().Require().Histories.SelectMany(h => h.Trials)];
        Assert.Contains(trials, t => t is { Device: Device.MatOrGate, Trial.Contacts.Length: > 5 });
        Assert.Contains(trials, t => t is { Device: Device.TwoForcePlates, Trial.Measures.Length: > 5 });
        foreach (MeasuredTrial trial in trials)
        {
            byte[] bytes = Store.RawBytes(trial.Sha256).Require().ToArray();
            Trials.Trial again = MeasuredRecording
                .ByCore(bytes, trial.Labels)
                .Trials.Require()
                .Single(t => t.Number == trial.Trial.Number);
            Assert.Equal(again.Measures, trial.Trial.Measures);
            Assert.Equal(again.Events, trial.Trial.Events);
            Assert.Equal(again.Contacts, trial.Trial.Contacts);
            Assert.Equal(again.Warnings, trial.Trial.Warnings);
            Assert.Equal(again.Doubtful, trial.Trial.Doubtful);
        }
    }

    [Fact]
    public void Import_OfARecordingThatReadingRepaired_KeepsTheWarningWithEachTrial()
    {
        string[] lines = _squad.Read("recordings/r000.csv").TrimEnd().Split('\n');
        _squad.Write(
            "recordings/r000.csv",
            string.Join('\n', lines.Select((l, i) => l + (i == 0 ? ",mood" : ",fine")))
        );

        Store.Import(_squad.Path).Require();

        MeasuredTrial[] trials = [.. Store.TrialsOf("a01").Where(t => t.File == "recordings/r000.csv")];
        Assert.NotEmpty(trials);
        Assert.All(trials, t => Assert.Contains(t.Trial.Warnings, w => w.Contains("mood", StringComparison.Ordinal)));
    }

    [Fact]
    public void Import_OfABadRecording_KeepsItsBytesAndItsSentenceAndGoesOn()
    {
        ImportReport report = Import();

        Assert.Equal((15, 13), (report.Recordings, report.Measured));
        Assert.Equal(["recordings/r006.csv", "recordings/r013.csv"], report.Refused.Select(r => r.File));
        Assert.Equal("line 2: the force is no number: export it again.", report.Refused[0].Refusal?.Sentence);
        Assert.Equal(
            _squad.Read("recordings/r006.csv"),
            Encoding.UTF8.GetString(Store.RawBytes(report.Refused[0].Sha256!).Require().Span)
        );
        Assert.DoesNotContain(Store.TrialsOf("a01"), t => t.File == "recordings/r006.csv");
    }

    [Fact]
    public void Import_Twice_ChangesNothing()
    {
        Import();
        string[] before = Dump.Rows(Store);

        ImportReport second = Import();

        Assert.Equal(before, Dump.Rows(Store));
        Assert.Equal((1, 15), (second.Batch, second.AlreadyKnown));
    }

    [Fact]
    public void Import_OfARecordingThatFindsAFaultInMeasuring_GoesOnWithTheOthers()
    {
        ImportReport report = Store
            .Import(
                _squad.Path,
                (bytes, labels) =>
                    labels?.Date?.Day == 3
                        ? throw new InvalidOperationException("a fault")
                        : FakeMeasuring.Measure(bytes, labels)
            )
            .Require();

        StoredRecording refused = report.Refused.First(r => r.File == "recordings/r002.csv");
        Assert.Contains("because of a fault in this program (InvalidOperationException)", refused.Refusal?.Sentence);
        Assert.Equal(12, report.Measured);
    }

    [Fact]
    public void Import_AfterARowOfATableWasCorrected_HoldsTheCorrectedRowAlone()
    {
        Import();
        _squad.Write(SquadTables.Symptoms, FolderText.SymptomsHeader + "a02,2027-01-03,knee,left,,,pain,rest,6,\n");

        ImportReport report = Import();

        SymptomReport symptom = Assert.Single(Store.Load().Require().Histories.SelectMany(h => h.Symptoms));
        Assert.Equal((6, "rest"), (symptom.Score, symptom.When));
        Assert.Equal(2, report.Batch);
        Assert.Equal(15, report.AlreadyKnown);
    }

    [Fact]
    public void Import_AfterARecordingWasCorrected_CountsTheNewBytesAndKeepsTheOld()
    {
        Import();
        string old = Store.Recordings().Single(r => r.File == "recordings/r000.csv").Sha256!;
        _squad.Write("recordings/r000.csv", SquadOnDisk.Recording(100));

        Import();

        StoredRecording now = Store.Recordings().Single(r => r.File == "recordings/r000.csv");
        Assert.NotEqual(old, now.Sha256);
        Assert.All(
            Store.TrialsOf("a01").Where(t => t.File == "recordings/r000.csv"),
            t => Assert.Equal(now.Sha256, t.Sha256)
        );
        Assert.True(Store.RawBytes(old).TryGet(out _, out _));
    }

    [Fact]
    public void Import_AfterALabelWasCorrected_MeasuresAgainUnderTheNewLabel()
    {
        Import();
        _squad.Write(
            SquadTables.Trials,
            _squad.Read(SquadTables.Trials).Replace("recordings/r000.csv,a01", "recordings/r000.csv,a02")
        );

        ImportReport report = Import();

        Assert.Equal(14, report.AlreadyKnown);
        Assert.Contains(Store.TrialsOf("a02"), t => t.File == "recordings/r000.csv");
        Assert.DoesNotContain(Store.TrialsOf("a01"), t => t.File == "recordings/r000.csv");
    }

    [Fact]
    public void Import_AfterARecordingWasTakenOut_CountsItNoMoreAndKeepsItsBytes()
    {
        Import();
        string sha256 = Store.Recordings()[0].Sha256!;
        _squad.Delete("recordings/r000.csv");
        _squad.Write(
            SquadTables.Trials,
            string.Join('\n', _squad.Read(SquadTables.Trials).Split('\n').Where(l => !l.Contains("r000")))
        );

        Assert.Equal(14, Import().Recordings);
        Assert.True(Store.RawBytes(sha256).TryGet(out _, out _));
    }

    [Fact]
    public void Import_OfAMissingRecording_SaysSoInTheFoldersOrder()
    {
        _squad.Delete("recordings/r001.csv");

        ImportReport report = Import();

        Assert.Equal("recordings/r001.csv", report.Refused[0].File);
        Assert.Contains("there is no such file", report.Refused[0].Refusal?.Sentence);
        Assert.Null(report.Refused[0].Sha256);
    }

    [Fact]
    public void Import_OfOneContentUnderTwoNames_CountsItOnceAndSaysSo()
    {
        _squad.Write("recordings/copy.csv", _squad.Read("recordings/r000.csv"));
        _squad.Write(
            SquadTables.Trials,
            _squad.Read(SquadTables.Trials) + "recordings/copy.csv,a01,2027-01-01,countermovement-jump,,,,both\n"
        );

        Import();

        Assert.DoesNotContain(Store.TrialsOf("a01"), t => t.File == "recordings/copy.csv");
        Assert.Contains(
            Store.Load().Require().Problems,
            p => p.Sentence == "recordings/copy.csv: holds the same bytes as recordings/r000.csv; it counts once."
        );
    }

    [Theory]
    [InlineData("recordings/r000.csv,a01,2027-01-01", "recordings/r000.csv,z99,2027-01-01", "'z99' is nobody's id")]
    [InlineData("recordings/r000.csv,a01,2027-01-01", "recordings/r000.csv,,2027-01-01", "names no athlete")]
    [InlineData("recordings/r000.csv,a01,2027-01-01", "recordings/r000.csv,a01,", "has no date")]
    public void Import_OfATrialThatBelongsNowhere_SaysSo(string written, string instead, string because)
    {
        _squad.Write(SquadTables.Trials, _squad.Read(SquadTables.Trials).Replace(written, instead));

        Import();
        StoredSquad stored = Store.Load().Require();

        Assert.Contains(because, Assert.Single(stored.Problems).Sentence);
        Assert.DoesNotContain(stored.Histories.SelectMany(h => h.Trials), t => t.File == "recordings/r000.csv");
    }

    [Fact]
    public void Import_OfASafetyTableThatIsGone_StopsPlanningUntilItIsBack()
    {
        Import();
        _squad.Delete(SquadTables.Restrictions);

        Import();
        Assert.Equal(SquadTables.Restrictions, Assert.Single(Store.Load().Require().StopsPlanning).File);
        Import();
        Assert.Single(Store.Load().Require().StopsPlanning);

        _squad.Write(SquadTables.Restrictions, FolderText.RestrictionsHeader);
        Import();
        Assert.Empty(Store.Load().Require().StopsPlanning);
    }

    [Fact]
    public void Import_OfAnotherSquad_IsRefusedAndChangesNothing()
    {
        Import();
        string[] before = Dump.Rows(Store);
        _squad.Write(SquadTables.Squad, FolderText.SquadYaml.Replace("Riverside Club", "Hillside Club"));

        Outcome<ImportReport> import = Store.Import(_squad.Path, FakeMeasuring.Measure);

        Assert.False(import.TryGet(out _, out Refusal? refusal));
        Assert.StartsWith("The store holds the squad 'Riverside Club'", refusal.Sentence);
        Assert.Equal(before, Dump.Rows(Store));
    }

    [Fact]
    public void Import_Cancelled_LeavesWhatASecondImportCompletesToTheRowsOfACleanOne()
    {
        using var stop = new CancellationTokenSource();
        var progress = new Now(p =>
        {
            if (p.Done == 5)
            {
                stop.Cancel();
            }
        });

        Assert.ThrowsAny<OperationCanceledException>(() =>
            Store.Import(_squad.Path, FakeMeasuring.Measure, progress, stop.Token)
        );
        Assert.Contains(Store.Load().Require().Problems, p => p.Sentence.Contains("was cut short"));
        Import();

        using Store clean = Jumpwright.Storage.Stores.Store.InMemory(FixedClock.DemoDay);
        clean.Import(_squad.Path, FakeMeasuring.Measure).Require();
        Assert.Equal(Dump.Rows(clean), Dump.Rows(Store));
    }

    [Fact]
    public void Import_TellsHowFarItIs()
    {
        var seen = new List<ImportProgress>();

        Store.Import(_squad.Path, FakeMeasuring.Measure, new Now(seen.Add)).Require();

        Assert.Equal(Enumerable.Range(0, 16), seen.Select(p => p.Done));
        Assert.All(seen, p => Assert.Equal(15, p.Total));
    }

    [Fact]
    public void Remeasure_ByTheSameVersion_ChangesNothing()
    {
        Store.Import(_squad.Path).Require();

        RemeasureReport report = Store.Remeasure().Require();

        Assert.Empty(report.Changes);
        Assert.Equal((15, 15), (report.Recordings, report.Unchanged));
    }

    [Fact]
    public void Remeasure_ByAnotherVersion_ShowsWhatItChangesAndWritesNothing()
    {
        Import();
        string[] before = Dump.Rows(Store);

        RemeasureReport report = Store.Remeasure(Differently).Require();

        Assert.Equal(before, Dump.Rows(Store));
        RemeasureChange height = Assert.Single(report.Changes, c => c.File == "recordings/r000.csv");
        Assert.Equal((1, MeasureNames.JumpHeight), (height.Trial, height.After?.Name));
        Assert.Equal(2, height.InStandardUncertainties!.Value, 9);
        Assert.Contains(
            report.Changes,
            c => c.Sentence.Contains("r001.csv: was measured and would be refused", StringComparison.Ordinal)
        );
        Assert.Contains(
            report.Changes,
            c => c.Sentence.Contains("r006.csv: was refused (line 2", StringComparison.Ordinal)
        );
        Assert.Equal(12, report.Unchanged);
    }

    /// <summary>As the fake, but one height is moved by two of its doubts, one refused, and one bad one measured.</summary>
    private static MeasuredRecording Differently(ReadOnlyMemory<byte> bytes, RecordingLabels? manifest)
    {
        MeasuredRecording asBefore = FakeMeasuring.Measure(bytes, manifest);
        switch (manifest?.Date?.Day)
        {
            case 1:
                ImmutableArray<Trials.Trial> trials = asBefore.Trials.Require();
                Measure old = trials[0].Measures[0];
                var moved = new Measure(
                    old.Name,
                    old.Value + (2 * old.StandardUncertainty),
                    old.Unit,
                    old.StandardUncertainty,
                    old.Method
                );
                return asBefore with
                {
                    Trials = trials.SetItem(0, trials[0] with { Measures = trials[0].Measures.SetItem(0, moved) }),
                };
            case 2:
                return asBefore with { Trials = new Refusal("no more") };
            case 7:
                return FakeMeasuring.Measure(new byte[] { 1, 2, 3 }, manifest);
            default:
                return asBefore;
        }
    }

    [Fact]
    public void Load_OfAnEmptyStore_IsRefusedWithASentence()
    {
        Assert.False(Store.Load().TryGet(out _, out Refusal? refusal));
        Assert.Equal("The store holds no squad yet: import a squad folder first.", refusal.Sentence);
    }

    [Fact]
    public void Check_OfASoundStore_HasNothingToSay()
    {
        Import();

        Assert.Empty(Store.Check());
    }

    [Fact]
    public void Export_ThenImport_GivesTheSameRowsAndTheSameBytes()
    {
        _squad.Write(SquadTables.Symptoms, FolderText.SymptomsHeader + "a02,yesterday,knee,left,,,pain,during,3,\n");
        _squad.Delete("recordings/r001.csv");
        Import();
        string folder = Path.Combine(_squad.Path, "out");

        int files = Store.Export(folder).Require();

        Assert.Equal(14 + 7, files);
        Assert.Equal(
            File.ReadAllBytes(Path.Combine(_squad.Path, "recordings/r005.csv")),
            File.ReadAllBytes(Path.Combine(folder, "recordings/r005.csv"))
        );
        using Store other = Jumpwright.Storage.Stores.Store.InMemory(FixedClock.DemoDay);
        other.Import(folder, FakeMeasuring.Measure).Require();
        Assert.Equal(Dump.Rows(Store), Dump.Rows(other));
    }

    [Fact]
    public void Export_IntoAFolderThatHoldsSomething_IsRefused()
    {
        Import();

        Assert.False(Store.Export(_squad.Path).TryGet(out _, out Refusal? refusal));
        Assert.Contains("is not empty", refusal.Sentence);
    }

    [Fact]
    public void Erase_OfAnAthlete_LeavesNoRowNoByteAndNoPlanOfTheirs()
    {
        Import();
        string theirs = Store.TrialsOf("a02")[0].Sha256;
        Store.KeepPlan(new LocalDate(2027, 1, 4), 1, """{"athlete": "a02"}""");
        Store.KeepPlan(new LocalDate(2027, 1, 11), 1, """{"athlete": "a01"}""");

        ErasureReport report = Store.Erase("a02").Require();

        Assert.Equal(5, report.Recordings);
        Assert.Equal(1, report.Plans);
        Assert.DoesNotContain(Dump.Rows(Store), row => Names("a02", row) || row.Contains(theirs));
        Assert.False(Store.RawBytes(theirs).TryGet(out _, out _));
        Assert.Empty(Store.Check());
        string folder = Path.Combine(_squad.Path, "out");
        Store.Export(folder).Require();
        foreach (string file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            Assert.False(Names("a02", File.ReadAllText(file)));
            Assert.DoesNotContain("Ben", File.ReadAllText(file));
        }

        Assert.NotEmpty(Store.TrialsOf("a01"));
    }

    [Fact]
    public void Erase_OfNobody_IsRefused()
    {
        Import();

        Assert.False(Store.Erase("z99").TryGet(out _, out Refusal? refusal));
        Assert.Contains("'z99'", refusal.Sentence);
    }

    [Fact]
    public void Plan_KeptTwice_IsKeptOnce_AndAChangedOneBesideIt()
    {
        var from = new LocalDate(2027, 1, 4);

        Assert.Null(Store.LatestPlan());
        Store.KeepPlan(from, 1, "{}");
        Store.KeepPlan(from, 1, "{}");
        StoredPlan changed = Store.KeepPlan(from, 1, """{"schema": 1}""");

        Assert.Equal([2, 1], Store.Plans().Select(p => p.Number));
        Assert.Equal(changed, Store.Plans()[0]);
        Assert.Equal(changed, Store.LatestPlan());
        Assert.Equal(Instant.FromUtc(2027, 1, 4, 9, 0), changed.SavedAt);
    }

    [Fact]
    public void Journal_TheSameEntryTwice_IsOneEntry_AndAnotherUnderItsIdIsToldAndNotTaken()
    {
        Import();
        JournalEntry set = Entry("one", "a01", "{\"set\": 1}");

        Assert.Equal(["one"], Store.Append([set]).Added);
        Assert.Equal(["one"], Store.Append([set, set]).Known.Distinct());
        JournalReceipt other = Store.Append([set with { Json = "{}" }, Entry("two", "a02", "{}")]);

        Assert.Equal(["one"], other.Different);
        Assert.Equal(["two"], other.Added);
        Assert.Equal([set, Entry("two", "a02", "{}")], Store.Journal());
    }

    [Fact]
    public void Journal_StaysThroughAnImport_AndGoesWithItsAthlete()
    {
        Import();
        Store.Append([Entry("one", "a01", "{}"), Entry("two", "a02", "{}")]);

        _squad.Write("athletes.csv", _squad.Read("athletes.csv") + "\n");
        Import();
        Assert.Equal(2, Store.Journal().Length);

        Store.Erase("a02").Require();
        Assert.Equal("a01", Assert.Single(Store.Journal()).AthleteId);
    }

    private static JournalEntry Entry(string id, string athlete, string json) =>
        new(
            id,
            "set",
            athlete,
            "2027-01-04",
            Instant.FromUtc(2027, 1, 4, 9, 0).PlusNanoseconds(123_000_000),
            "tablet",
            json
        );

    /// <summary>The id on its own, not as part of a hash.</summary>
    private static bool Names(string id, string text) =>
        Regex.IsMatch(text, $"(?<![0-9a-z]){id}(?![0-9a-z])", RegexOptions.None, TimeSpan.FromSeconds(5));

    private ImportReport Import() => Store.Import(_squad.Path, FakeMeasuring.Measure).Require();

    /// <summary>Tells at once, on the thread that reports.</summary>
    private sealed class Now(Action<ImportProgress> tell) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value) => tell(value);
    }
}
