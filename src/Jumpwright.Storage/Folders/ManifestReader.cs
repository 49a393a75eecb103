using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders.Csv;

namespace Jumpwright.Storage.Folders;

/// <summary>
/// trials.csv. A cell that can't be read would win over the file's metadata if it could, so the recording is refused with
/// the sentence rather than measured under a label that its keeper meant to change.
/// </summary>
internal static class ManifestReader
{
    public static ImmutableArray<ManifestRow> Read(ReadOnlySpan<byte> bytes, ProblemList problems)
    {
        CsvTable? table = CsvTable.Read(TableSchema.Trials, bytes, problems);
        var rows = new List<ManifestRow>();
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (CsvRow row in table?.Rows ?? [])
        {
            ManifestRow read = One(row, problems);
            if (places.TryAdd(read.File, rows.Count))
            {
                rows.Add(read);
                continue;
            }

            int first = places[read.File];
            if (rows[first].Labels == read.Labels && rows[first].Fault is null && read.Fault is null)
            {
                problems.Add(
                    row.File,
                    row.Line,
                    ProblemWeight.Note,
                    $"'{read.File}' is listed twice, both times alike."
                );
            }
            else
            {
                rows[first] = rows[first] with
                {
                    Fault =
                        rows[first].Fault
                        ?? RefusedFor.LabelUnreadable.Refuse(
                            $"{row.File} lines {rows[first].Line} and {row.Line} list '{read.File}' with different labels: take one out."
                        ),
                };
            }
        }

        problems.AddRange(
            rows.Where(r => r.Fault is not null)
                .Select(r => new FolderProblem(
                    SquadTables.Trials,
                    r.Line,
                    ProblemWeight.LeftOut,
                    r.Fault!.Sentence,
                    r.Labels.Athlete
                ))
        );
        return rows.ToImmutableArray();
    }

    private static ManifestRow One(CsvRow row, ProblemList problems)
    {
        string written = row["file"] ?? "";
        string file = written.Replace('\\', '/');
        if (file != written)
        {
            problems.Add(
                row.File,
                row.Line,
                ProblemWeight.Note,
                $"'{RowReader.Shown(written)}' was read with / between folders."
            );
        }

        while (file.StartsWith("./", StringComparison.Ordinal))
        {
            file = file[2..];
        }

        var cells = new RowReader(row);
        if (cells.IsBroken)
        {
            return Faulty(row, file, cells.Faults);
        }

        if (file.Length == 0)
        {
            return Faulty(row, "", Sentence.Of($"the file is empty: write the recording's name"));
        }

        if (!StaysInside(file))
        {
            return Faulty(
                row,
                file,
                Sentence.Of($"'{RowReader.Shown(file)}' leads out of the folder: put the recording inside it")
            );
        }

        if (SquadTables.All.Contains(file, StringComparer.OrdinalIgnoreCase))
        {
            return Faulty(row, file, Sentence.Of($"'{file}' is one of the squad's own tables, not a recording"));
        }

        string? task = cells.Text("task");
        if (task is not null && JumpTasks.Parse(task) is null)
        {
            cells.Fault(
                Sentence.Of($"task '{RowReader.Shown(task)}' must be one of {string.Join(", ", JumpTasks.All)}")
            );
        }

        string? plates = cells.Text("plates");
        if (plates is not null && PlateChoice.Parse(plates) is null)
        {
            cells.Fault(
                Sentence.Of(
                    $"plates '{RowReader.Shown(plates)}' must be a plate's number, such as 3, or left+right, such as 1+2"
                )
            );
        }

        var labels = new RecordingLabels(
            cells.Text("athlete"),
            cells.Date("date"),
            JumpTasks.Parse(task),
            cells.Number("body_mass_kg", 15, 300, "kg"),
            cells.Number("external_load_kg", 0, 600, "kg"),
            cells.Number("drop_height_m", 0, 3, "m"),
            Limb(cells),
            Plates: PlateChoice.Parse(plates),
            FramesPerSecond: cells.Number(
                "frames_per_second",
                RecordingLabels.LeastFramesPerSecond,
                RecordingLabels.MostFramesPerSecond,
                "frames a second"
            )
        );
        return cells.HasFaults
            ? Faulty(row, file, cells.Faults) with
            {
                Labels = labels,
            }
            : new ManifestRow(row.Line, file, labels, null);
    }

    private static ManifestRow Faulty(CsvRow row, string file, string what) =>
        new(
            row.Line,
            file.Length == 0 ? $"{row.File} line {row.Line}" : file,
            RecordingLabels.None,
            RefusedFor.LabelUnreadable.Refuse($"{row.File} line {row.Line}: {Sentence.Plain(what):open}.")
        );

    private static Limb? Limb(RowReader cells)
    {
        switch (cells.Text("limb")?.ToLowerInvariant())
        {
            case null:
                return null;
            case "both":
                return Jumpwright.Recordings.Limb.Both;
            case "left":
                return Jumpwright.Recordings.Limb.Left;
            case "right":
                return Jumpwright.Recordings.Limb.Right;
            default:
                cells.Fault(
                    Sentence.Of($"limb '{RowReader.Shown(cells.Text("limb")!)}' must be both, left, right or empty")
                );
                return null;
        }
    }

    private static bool StaysInside(string file) =>
        !Path.IsPathRooted(file)
        && !file.Contains(':', StringComparison.Ordinal)
        && !file.Any(char.IsControl)
        && file.Split('/').All(part => part is not ("" or "." or ".."));
}
