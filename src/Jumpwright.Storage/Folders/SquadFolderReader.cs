using System.Collections.Immutable;
using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders.Calendars;
using Jumpwright.Storage.Folders.Csv;
using Jumpwright.Storage.Folders.Tables;
using NodaTime;

namespace Jumpwright.Storage.Folders;

/// <summary>Reads the files of a squad folder in the order in which they need each other.</summary>
internal static class SquadFolderReader
{
    public static Outcome<SquadFolder> ReadFolder(string path) => Open(path).Then(f => f.Read());

    /// <summary>Takes the bytes of the squad's own files, once.</summary>
    public static Outcome<SquadFiles> Open(string path)
    {
        if (!Directory.Exists(path))
        {
            return FolderRefusals.NoFolder(path);
        }

        var problems = new ProblemList();
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files = Files(path, problems);
        if (problems.Count == 0 && !files.ContainsKey(SquadTables.Squad) && !files.ContainsKey(SquadTables.Athletes))
        {
            return FolderRefusals.NotASquad(path);
        }

        string name = Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));
        return new SquadFiles(name, files, problems);
    }

    /// <summary>The squad's own files of a folder, by their names in <see cref="SquadTables.All"/>.</summary>
    private static Dictionary<string, ReadOnlyMemory<byte>> Files(string path, ProblemList problems)
    {
        var files = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);
        string[] present = Directory
            .GetFiles(path)
            .Select(f => Path.GetFileName(f))
            .Order(StringComparer.Ordinal)
            .ToArray();
        foreach (string name in SquadTables.All)
        {
            string? found =
                present.FirstOrDefault(p => p == name)
                ?? present.FirstOrDefault(p => p.Equals(name, StringComparison.OrdinalIgnoreCase));
            if (found is null)
            {
                continue;
            }

            if (found != name)
            {
                problems.Add(found, null, ProblemWeight.Note, $"was read as {name}; write the name so.");
            }

            if (FileBytes.TryRead(Path.Combine(path, found), name, problems) is { } bytes)
            {
                files[name] = bytes;
            }
        }

        string exercises = Path.Combine(path, SquadTables.ExercisesFolder);
        if (Directory.Exists(exercises))
        {
            foreach (string file in Directory.GetFiles(exercises, "*.json").Order(StringComparer.Ordinal).Take(500))
            {
                string name = $"{SquadTables.ExercisesFolder}/{Path.GetFileName(file)}";
                if (FileBytes.TryRead(file, name, problems) is { } bytes)
                {
                    files[name] = bytes;
                }
            }
        }

        return files;
    }

    /// <summary>The coach's own exercises; the core reads and judges them.</summary>
    private static ImmutableArray<KeyValuePair<string, string>> ExerciseFiles(
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files
    ) =>
        [
            .. files
                .Where(f => f.Key.StartsWith(SquadTables.ExercisesFolder + "/", StringComparison.Ordinal))
                .OrderBy(f => f.Key, StringComparer.Ordinal)
                .Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetString(f.Value.Span).TrimStart('\uFEFF'))),
        ];

    public static Outcome<SquadFolder> ReadFiles(
        string name,
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
        IEnumerable<FolderProblem> found
    )
    {
        var problems = new ProblemList();
        problems.AddRange(found);
        Squad squad = SquadOf(name, files, problems);
        var reading = new FolderReading(problems);

        ImmutableArray<Athlete> athletes = Table(TableSchema.Athletes, files, reading, AthletesReader.Read);
        if (!files.ContainsKey(SquadTables.Athletes) && problems.TrueForAll(p => p.File != SquadTables.Athletes))
        {
            problems.Add(
                SquadTables.Athletes,
                null,
                ProblemWeight.StopsPlanning,
                "is missing: nobody is known to plan for."
            );
        }

        reading.Roster = new Roster(athletes.Select(a => a.Id));
        ImmutableArray<LimitOverride> overrides = Table(TableSchema.Overrides, files, reading, OverridesReader.Read);
        squad = squad with { Overrides = overrides, ExerciseFiles = ExerciseFiles(files) };
        ImmutableArray<CompletedItem> completed = Table(TableSchema.Completed, files, reading, CompletedReader.Read);
        ImmutableArray<ScreenResult> screens = Table(TableSchema.Screens, files, reading, ScreensReader.Read);
        ImmutableArray<SymptomReport> symptoms = Table(TableSchema.Symptoms, files, reading, SymptomsReader.Read);
        ImmutableArray<Restriction> restrictions = Table(
            TableSchema.Restrictions,
            files,
            reading,
            RestrictionsReader.Read
        );
        ImmutableArray<ManifestRow> manifest = files.TryGetValue(SquadTables.Trials, out ReadOnlyMemory<byte> trials)
            ? ManifestReader.Read(trials.Span, problems)
            : [];
        return new SquadFolder(
            squad,
            athletes,
            screens,
            [.. symptoms, .. reading.Swellings],
            [.. restrictions, .. reading.Closures],
            completed,
            manifest,
            [.. problems]
        );
    }

    private static Squad SquadOf(
        string name,
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
        ProblemList problems
    )
    {
        Squad squad;
        if (files.TryGetValue(SquadTables.Squad, out ReadOnlyMemory<byte> yaml))
        {
            squad = new SquadYaml(problems).Read(name, yaml.Span);
        }
        else
        {
            squad = SquadYaml.Empty(name);
            if (problems.TrueForAll(p => p.File != SquadTables.Squad))
            {
                problems.Add(
                    SquadTables.Squad,
                    null,
                    ProblemWeight.StopsPlanning,
                    "is missing: the time zone, the training windows and the kit are not known, so nothing is planned."
                );
            }
        }

        if (!files.TryGetValue(SquadTables.Fixtures, out ReadOnlyMemory<byte> ics))
        {
            return squad;
        }

        DateTimeZone zone = DateTimeZoneProviders.Tzdb[squad.TimeZone];
        ImmutableArray<Fixture> fixtures = FixturesCalendar.Read(ics.Span, zone, problems);
        return squad with
        {
            Fixtures =
            [
                .. squad
                    .Fixtures.Concat(fixtures)
                    .Distinct()
                    .OrderBy(f => f.Date)
                    .ThenBy(f => f.Start ?? LocalTime.Midnight)
                    .ThenBy(f => f.Name, StringComparer.Ordinal),
            ],
        };
    }

    private static ImmutableArray<T> Table<T>(
        TableSchema schema,
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
        FolderReading reading,
        Func<CsvTable, FolderReading, ImmutableArray<T>> read
    ) =>
        files.TryGetValue(schema.File, out ReadOnlyMemory<byte> bytes)
        && CsvTable.Read(schema, bytes.Span, reading.Problems) is { } table
            ? read(table, reading)
            : [];
}
