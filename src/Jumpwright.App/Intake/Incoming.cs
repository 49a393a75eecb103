using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Intake;

/// <summary>
/// Recordings that come in through the pages. They wait in a folder of their own until all have come, then go into
/// <c>recordings/</c> with their rows in trials.csv, and the squad folder is imported again: it stays the truth.
/// </summary>
internal sealed class Incoming(FrontDesk desk)
{
    private const string Waiting = ".jumpwright-incoming";
    private const int LongestName = 100;

    /// <summary>What the import last said of itself.</summary>
    public ConcurrentDictionary<string, ImportProgress> Progress { get; } = new(StringComparer.Ordinal);

    /// <summary>Keeps one file until its intake is finished.</summary>
    /// <returns>The name under which it waits, or why it is not taken.</returns>
    public async Task<Outcome<string>> Keep(string intake, string name, Stream bytes, CancellationToken cancel)
    {
        if (desk.Opened.Folder is not { } folder)
        {
            return NoFolder();
        }

        if (!Guid.TryParse(intake, out Guid id))
        {
            return Refusal.Of($"What was sent can't be read.");
        }

        // A folder keeps its shape while it waits: its trials.csv names recordings by their place in it.
        string[] parts =
        [
            .. name.Replace('\\', '/').Split('/').Where(p => p is not ("" or "." or "..")).Select(Clean).TakeLast(8),
        ];
        string clean = parts.LastOrDefault() ?? "";
        bool known =
            clean.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
            || clean.EndsWith(".c3d", StringComparison.OrdinalIgnoreCase);
        if (!known)
        {
            return Refusal.Of($"{clean} is no recording: recordings are .csv or .c3d files.");
        }

        if (
            !clean.Equals(SquadTables.Trials, StringComparison.OrdinalIgnoreCase)
            && SquadTables.Csv.Contains(clean, StringComparer.OrdinalIgnoreCase)
        )
        {
            return Refusal.Of($"{clean} is a table of a squad, not a recording: edit it in the squad folder.");
        }

        string place = Path.Combine(folder, Waiting, id.ToString());
        string under = Path.Combine(parts[..^1]);
        Directory.CreateDirectory(Path.Combine(place, under));
        string free = Path.Combine(under, Free(place, under, clean));
        using FileStream file = File.Create(Path.Combine(place, free));
        await bytes.CopyToAsync(file, cancel);
        return free.Replace('\\', '/');
    }

    /// <summary>Takes in all that waits under that number.</summary>
    public Outcome<IntakeEntry> Finish(string intake, string who, CancellationToken cancel)
    {
        if (desk.Opened.Folder is not { } folder)
        {
            return NoFolder();
        }

        string place = Path.Combine(folder, Waiting, Guid.TryParse(intake, out Guid id) ? id.ToString() : "?");
        if (!Directory.Exists(place))
        {
            return Refusal.Of($"Nothing waits to be taken in.");
        }

        Outcome<IntakeEntry> outcome = desk.Change<Outcome<IntakeEntry>>(squad =>
            List(place)
                .Then(listed =>
                {
                    var files = ImmutableArray.CreateBuilder<IntakeEntry.Taken>();
                    string recordings = Path.Combine(folder, SquadTables.RecordingsFolder);
                    Directory.CreateDirectory(recordings);
                    Dictionary<string, string> kept = new(StringComparer.Ordinal);
                    foreach (StoredRecording there in squad.Recordings.Where(r => r.Sha256 is not null))
                    {
                        kept.TryAdd(there.Sha256!, there.File);
                    }

                    var known = ImmutableArray.CreateBuilder<IntakeEntry.Known>();
                    foreach (ListedRecording recording in listed.Where(l => l.FullPath is not null))
                    {
                        byte[] bytes = File.ReadAllBytes(recording.FullPath!);
                        string sha256 = Convert.ToHexStringLower(SHA256.HashData(bytes));
                        if (kept.TryGetValue(sha256, out string? same))
                        {
                            string handed = Path.GetRelativePath(place, recording.FullPath!).Replace('\\', '/');
                            known.Add(new IntakeEntry.Known(handed, same, TakenAt(squad.Entries, same, sha256)));
                            continue;
                        }

                        string name = Free(recordings, "", Path.GetFileName(recording.FullPath!));
                        File.WriteAllBytes(Path.Combine(recordings, name), bytes);
                        string file = $"{SquadTables.RecordingsFolder}/{name}";
                        kept.Add(sha256, file);
                        files.Add(new IntakeEntry.Taken(file, sha256));
                        if (recording.Labels is { } labels)
                        {
                            Write(folder, file, labels);
                        }
                    }

                    var entry = new IntakeEntry(id.ToString(), files.ToImmutable())
                    {
                        AlreadyHere = known.ToImmutable(),
                        NotThere =
                        [
                            .. listed.Where(l => l.FullPath is null).Select(l => l.Fault?.Sentence).OfType<string>(),
                        ],
                    };
                    squad.Append([Entry(EntryKinds.Intake, entry, who)]);
                    return squad
                        .ImportAgain(new Told(p => Progress[entry.Number] = p), cancel)
                        .Then<IntakeEntry>(_ => entry);
                })
        );
        Directory.Delete(place, recursive: true);
        return outcome;
    }

    /// <summary>Takes an intake back: its files that nobody changed since go, with their rows.</summary>
    public Outcome<int> Undo(string intake, string who, CancellationToken cancel) =>
        desk.Change<Outcome<int>>(squad =>
        {
            if (squad.Folder is not { } folder)
            {
                return NoFolder();
            }

            if (
                All(squad.Entries).FirstOrDefault(i => i.Entry.Number == intake)
                is not { Entry: { } entry, Undone: false }
            )
            {
                return Refusal.Of($"There is no such intake, or it was taken back already.");
            }

            int gone = 0;
            foreach (IntakeEntry.Taken taken in entry.Files)
            {
                string path = Path.GetFullPath(Path.Combine(folder, taken.File));
                string inside =
                    Path.GetFullPath(Path.Combine(folder, SquadTables.RecordingsFolder)) + Path.DirectorySeparatorChar;
                if (
                    path.StartsWith(inside, StringComparison.Ordinal)
                    && File.Exists(path)
                    && Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path))) == taken.Sha256
                )
                {
                    File.Delete(path);
                    Replace(folder, table => ManifestEditor.Without(table, taken.File));
                    gone++;
                }
            }

            squad.Append([Entry(EntryKinds.IntakeUndone, entry with { Files = [] }, who)]);
            return squad.ImportAgain(null, cancel).Then<int>(_ => gone);
        });

    /// <summary>Writes a recording's row in trials.csv and measures it with that.</summary>
    public Outcome<StoredRecording> Label(
        string file,
        IReadOnlyDictionary<string, string> cells,
        CancellationToken cancel
    ) =>
        desk.Change<Outcome<StoredRecording>>(squad =>
        {
            if (squad.Folder is not { } folder)
            {
                return NoFolder();
            }

            if (squad.Recordings.All(r => r.File != file))
            {
                return Refusal.Of($"There is no such recording in the squad folder.");
            }

            // Labels that the form does not ask for stay as they are.
            Dictionary<string, string> row = Row(file, squad.Recordings.First(r => r.File == file).Labels);
            foreach ((string column, string cell) in cells.Where(c => c.Key != "file"))
            {
                row[column] = cell;
            }

            Replace(folder, table => ManifestEditor.With(table, row));
            return squad
                .ImportAgain(null, cancel)
                .Then<StoredRecording>(_ => squad.Recordings.First(r => r.File == file));
        });

    /// <summary>Writes what is missing of the labels of all recordings of an intake, and measures them once with that.</summary>
    /// <returns>How many rows were written.</returns>
    /// <param name="intake">Of which intake; empty: of all that lie in the folder.</param>
    /// <param name="chosen">Which of them; null: every one that lacks something.</param>
    /// <param name="cells">What they don't say.</param>
    /// <param name="cancel">Ends it early.</param>
    public Outcome<int> LabelAll(
        string intake,
        IReadOnlySet<string>? chosen,
        IReadOnlyDictionary<string, string> cells,
        CancellationToken cancel
    ) =>
        desk.Change<Outcome<int>>(squad =>
        {
            if (squad.Folder is not { } folder)
            {
                return NoFolder();
            }

            HashSet<string> files =
            [
                .. All(squad.Entries)
                    .Where(i => i.Entry.Number == intake && !i.Undone)
                    .SelectMany(i => i.Entry.Files)
                    .Select(f => f.File),
            ];
            StoredRecording[] lacking =
            [
                .. squad.Recordings.Where(r =>
                    (intake.Length == 0 || files.Contains(r.File)) && chosen?.Contains(r.File) != false && Lacks(r)
                ),
            ];
            foreach (StoredRecording recording in lacking)
            {
                Dictionary<string, string> row = Row(recording.File, recording.Labels);
                foreach ((string column, string cell) in cells)
                {
                    if (column == FrameRate && !IsOfFrames(recording))
                    {
                        continue;
                    }

                    if (row.GetValueOrDefault(column, "").Length == 0)
                    {
                        row[column] = cell;
                    }
                }

                Replace(folder, table => ManifestEditor.With(table, row));
            }

            return squad.ImportAgain(null, cancel).Then<int>(_ => lacking.Length);
        });

    /// <summary>The label of a camera's frames that no other recording has.</summary>
    public const string FrameRate = "frames_per_second";

    /// <summary>
    /// Whether nothing says whose a recording is, of which day, or what was asked, or how fast its camera was. One that was asked for a task and
    /// refused has another fault, which no label mends.
    /// </summary>
    public static bool Lacks(StoredRecording recording) =>
        LacksRate(recording)
        || LacksTask(recording)
        || (recording.Refusal is null && (recording.Labels.Athlete is null || recording.Labels.Date is null));

    /// <summary>Whether it was refused because its task is not said or not known; where no kind was kept, because it has none.</summary>
    public static bool LacksTask(StoredRecording recording) =>
        recording.Refusal is not null && (recording.RefusedFor?.IsOfTask() ?? recording.Labels.Task is null);

    /// <summary>Whether it is of counted frames whose rate nobody wrote.</summary>
    public static bool LacksRate(StoredRecording recording) =>
        IsOfFrames(recording) && recording.Refusal is not null && recording.Labels.FramesPerSecond is null;

    /// <summary>Whether it is of frames that somebody counted, measured or refused for their rate.</summary>
    public static bool IsOfFrames(StoredRecording recording) => recording.Device == Athletes.Device.Camera;

    /// <summary>All intakes, the latest first.</summary>
    public static IEnumerable<(IntakeEntry Entry, JournalEntry Written, bool Undone)> All(
        ImmutableArray<JournalEntry> journal
    )
    {
        HashSet<string> undone =
        [
            .. journal
                .Where(e => e.Kind == EntryKinds.IntakeUndone)
                .Select(e => JournalReading.Read<IntakeEntry>(e)?.Number ?? ""),
        ];
        return journal
            .Where(e => e.Kind == EntryKinds.Intake)
            .Reverse()
            .Select(e => (JournalReading.Read<IntakeEntry>(e)!, e, false))
            .Where(e => e.Item1 is { Files.IsDefault: false })
            .Select(e => (e.Item1, e.e, undone.Contains(e.Item1.Number)));
    }

    /// <summary>When a page took in that recording, ISO 8601; null where it lay in the folder.</summary>
    private static string? TakenAt(ImmutableArray<JournalEntry> journal, string file, string sha256) =>
        All(journal)
            .Where(i => !i.Undone && i.Entry.Files.Contains(new IntakeEntry.Taken(file, sha256)))
            .Select(i => InstantPattern.General.Format(i.Written.MadeAt))
            .FirstOrDefault();

    /// <summary>All that waits: what a trials.csv lists first, then what lies beside it and in folders under it, by the same rule.</summary>
    private static Outcome<ImmutableArray<ListedRecording>> List(string place)
    {
        var all = new List<ListedRecording>();
        foreach (
            string folder in Directory
                .EnumerateDirectories(place, "*", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .Prepend(place)
        )
        {
            if (!RecordingFolder.List(folder).TryGet(out ImmutableArray<ListedRecording> here, out Refusal? refusal))
            {
                return refusal;
            }

            all.AddRange(here.Where(l => l.FullPath is null || all.TrueForAll(a => !SamePath(a.FullPath, l.FullPath))));
        }

        return all.ToImmutableArray();
    }

    private static bool SamePath(string? a, string? b) =>
        a is not null && b is not null && Path.GetFullPath(a) == Path.GetFullPath(b);

    private static Refusal NoFolder() =>
        Refusal.Of($"A store was opened by itself, and recordings are taken into a squad folder: serve the folder.");

    private static void Write(string folder, string file, RecordingLabels labels) =>
        Replace(folder, table => ManifestEditor.With(table, Row(file, labels)));

    private static Dictionary<string, string> Row(string file, RecordingLabels labels) =>
        new(StringComparer.Ordinal)
        {
            ["file"] = file,
            ["athlete"] = labels.Athlete ?? "",
            ["date"] = labels.Date is { } day ? LocalDatePattern.Iso.Format(day) : "",
            ["task"] = labels.Task?.Id() ?? "",
            ["body_mass_kg"] = Number(labels.BodyMassKg),
            ["external_load_kg"] = Number(labels.ExternalLoadKg),
            ["drop_height_m"] = Number(labels.DropHeightM),
            ["limb"] = labels.Limb?.ToString().ToLowerInvariant() ?? "",
            ["plates"] = labels.Plates?.ToString() ?? "",
            [FrameRate] = Number(labels.FramesPerSecond),
        };

    private static string Number(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    /// <summary>Replaces trials.csv at once.</summary>
    private static void Replace(string folder, Func<ReadOnlySpan<byte>, byte[]> edit)
    {
        string path = Path.Combine(folder, SquadTables.Trials);
        byte[] before = File.Exists(path) ? File.ReadAllBytes(path) : [];
        WholeFile.Replace(path, edit(before));
    }

    /// <summary>One part of a name, without what could mislead a file system or a reader.</summary>
    private static string Clean(string name)
    {
        var text = new StringBuilder();
        foreach (Rune rune in name.EnumerateRunes())
        {
            bool fine = Rune.IsLetterOrDigit(rune) || rune.Value is '-' or '_' or '.' or ' ' or '(' or ')';
            text.Append(fine ? rune.ToString() : "_");
        }

        string clean = text.ToString().Trim().TrimStart('.');
        string ending = Path.GetExtension(clean);
        string stem = clean[..^ending.Length];
        while (Encoding.UTF8.GetByteCount(stem) > LongestName)
        {
            stem = stem[..^1];
        }

        return stem.TrimEnd('\uD800', ' ') + ending;
    }

    private static string Free(string folder, string under, string name)
    {
        string stem = Path.GetFileNameWithoutExtension(name);
        string ending = Path.GetExtension(name);
        string free = name;
        for (int n = 2; File.Exists(Path.Combine(folder, under, free)); n++)
        {
            free = $"{stem}-{n}{ending}";
        }

        return free;
    }

    private static JournalEntry Entry(string kind, IntakeEntry entry, string who) =>
        JournalWord.Now(kind, null, null, who, entry);

    private sealed class Told(Action<ImportProgress> tell) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value) => tell(value);
    }
}
