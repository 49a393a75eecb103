using System.Collections.Immutable;
using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Storage.Stores;

/// <summary>Reads what a store knows of a squad but the trials.</summary>
internal static class Outlining
{
    /// <summary>The outline, or null when nothing was imported yet.</summary>
    public static SquadOutline? Read(PlainReader plain, Func<StoreContext> context)
    {
        if (plain.Rows("SELECT name FROM squad", r => r.GetString(0)) is not [var name, ..])
        {
            return null;
        }

        // The tables are read again from their kept bytes: overrides, own exercises, surfaces, weather and sets stand in no row.
        var files = plain.Rows(
            """
            SELECT f.name, f.sha256, raw.length, raw.packed FROM squad_file f LEFT JOIN raw ON raw.sha256 = f.sha256
            WHERE NOT f.missing AND f.name <> 'trials.csv'
            """,
            r => new KeptFile(
                r.GetString(0),
                r.IsDBNull(3)
                    ? null
                    : new RawRow
                    {
                        Sha256 = r.GetString(1),
                        Length = r.GetInt64(2),
                        Packed = (byte[])r[3],
                    }
            )
        );
        SquadFolder? kept = Kept(files, name);
        bool tables = kept is not null && files.Exists(f => f.Name == SquadTables.Athletes);
        Squad squad =
            kept is not null && files.Count > 0 ? kept.Squad with { Name = name } : SquadRows.Squad(context())!;
        ImmutableArray<Athlete> athletes = tables
            ? kept!.Athletes
            : [.. context().Athletes.OrderBy(a => a.Position).AsEnumerable().Select(SquadRows.ToAthlete)];
        ILookup<string, ScreenResult> screens = Table(
            tables,
            kept?.Screens,
            () => context().Screens.OrderBy(r => r.Position).AsEnumerable().Select(SquadRows.ToScreen),
            s => s.AthleteId
        );
        ILookup<string, SymptomReport> symptoms = Table(
            tables,
            kept?.Symptoms,
            () => context().Symptoms.OrderBy(r => r.Position).AsEnumerable().Select(SquadRows.ToSymptom),
            s => s.AthleteId
        );
        ILookup<string, Restriction> restrictions = Table(
            tables,
            kept?.Restrictions,
            () => context().Restrictions.OrderBy(r => r.Position).AsEnumerable().Select(SquadRows.ToRestriction),
            r => r.AthleteId
        );
        ILookup<string, CompletedItem> completed = Table(
            tables,
            kept?.Completed,
            () => context().Completed.OrderBy(r => r.Position).AsEnumerable().Select(SquadRows.ToItem),
            c => c.AthleteId
        );
        return new SquadOutline(
            squad,
            [
                .. athletes.Select(a => new History(
                    a,
                    [],
                    [.. screens[a.Id]],
                    [.. symptoms[a.Id]],
                    [.. restrictions[a.Id]],
                    [.. completed[a.Id]]
                )
                {
                    Overrides = squad.OverridesOf(a.Id),
                }),
            ],
            Refused(plain),
            [.. Problems(plain), .. Unfinished(plain), .. Damaged(kept, files), .. Strays(plain)]
        );
    }

    /// <summary>How many trials that count lie after a day, and the last day among them.</summary>
    public static (int Trials, LocalDate? Last) After(PlainReader plain, LocalDate day)
    {
        HashSet<string> strays = [.. Strays(plain).Select(s => s.File)];
        int trials = 0;
        LocalDate? last = null;
        plain.Rows<object>(
            """
            SELECT r.file, m.date, (SELECT COUNT(*) FROM trial t WHERE t.measurement_id = m.id)
            FROM measurement m JOIN recording r ON r.measurement_id = m.id
            WHERE m.date > $day AND m.refusal IS NULL
            """,
            r =>
            {
                if (r.GetInt32(2) is > 0 and var here && !strays.Contains(r.GetString(0)))
                {
                    trials += here;
                    LocalDate date = PlainReader.Day(r, 1);
                    last = last is { } l ? LocalDate.Max(l, date) : date;
                }

                return null;
            },
            ("$day", LocalDatePattern.Iso.Format(day))
        );
        return (trials, last);
    }

    /// <summary>Whose trials a recording holds; nobody's when it counts nowhere.</summary>
    public static ImmutableArray<string> OwnersOf(PlainReader plain, string sha256) =>
        [
            .. plain
                .Rows(
                    """
                    SELECT m.athlete_id FROM measurement m JOIN recording r ON r.measurement_id = m.id
                    WHERE m.sha256 = $sha AND m.refusal IS NULL AND m.athlete_id IS NOT NULL ORDER BY r.position
                    """,
                    r => r.GetString(0),
                    ("$sha", sha256)
                )
                .Distinct(StringComparer.Ordinal),
        ];

    /// <summary>One text an athlete that changes with their recordings.</summary>
    public static ImmutableDictionary<string, string> Contents(PlainReader plain)
    {
        var texts = new Dictionary<string, StringBuilder>(StringComparer.Ordinal);
        plain.Rows<object>(
            """
            SELECT m.athlete_id, r.file, m.id FROM recording r JOIN measurement m ON m.id = r.measurement_id
            WHERE m.refusal IS NULL AND m.athlete_id IS NOT NULL ORDER BY r.position
            """,
            r =>
            {
                string athlete = plain.Word(r, 0);
                if (!texts.TryGetValue(athlete, out StringBuilder? text))
                {
                    texts[athlete] = text = new StringBuilder();
                }

                text.Append(r.GetString(1)).Append('\t').Append(r.GetString(2)).Append('\n');
                return null;
            }
        );
        return texts.ToImmutableDictionary(
            t => t.Key,
            t => MeasurementIds.Sha256(Encoding.UTF8.GetBytes(t.Value.ToString())),
            StringComparer.Ordinal
        );
    }

    private static SquadFolder? Kept(List<KeptFile> files, string name)
    {
        var bytes = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);
        foreach (KeptFile file in files)
        {
            if (file.Raw is null || RawBytes.Unpack(file.Raw) is not { } unpacked)
            {
                return null;
            }

            bytes[file.Name] = unpacked;
        }

        return SquadFolder.Read(name, bytes).TryGet(out SquadFolder? folder, out _) ? folder : null;
    }

    private static ILookup<string, T> Table<T>(
        bool kept,
        ImmutableArray<T>? read,
        Func<IEnumerable<T>> rows,
        Func<T, string> athlete
    ) => (kept ? read!.Value : rows()).ToLookup(athlete, StringComparer.Ordinal);

    private static ImmutableArray<RefusedFile> Refused(PlainReader plain) =>
        [
            .. plain.Rows(
                """
                SELECT r.file, COALESCE(m.athlete_id, r.athlete_id), COALESCE(m.refusal, r.refusal),
                       COALESCE(m.refused_for, r.refused_for)
                FROM recording r LEFT JOIN measurement m ON m.id = r.measurement_id
                WHERE r.measurement_id IS NULL OR r.measurement_id IN (SELECT id FROM measurement WHERE refusal IS NOT NULL)
                ORDER BY r.position
                """,
                r =>
                    r.IsDBNull(2)
                        ? null
                        : new RefusedFile(
                            r.GetString(0),
                            PlainReader.Text(r, 1),
                            r.GetString(2),
                            Enum.TryParse(PlainReader.Text(r, 3), out RefusedFor kind) ? kind : null
                        )
            ),
        ];

    private static List<FolderProblem> Problems(PlainReader plain) =>
        plain.Rows(
            "SELECT file, line, weight, sentence, athlete_id FROM problem ORDER BY position",
            r => new FolderProblem(
                r.GetString(0),
                r.IsDBNull(1) ? null : r.GetInt32(1),
                Enum.Parse<ProblemWeight>(r.GetString(2)),
                r.GetString(3),
                PlainReader.Text(r, 4)
            )
        );

    private static IEnumerable<FolderProblem> Unfinished(PlainReader plain)
    {
        if (plain.Rows("SELECT version FROM import_batch WHERE NOT finished", r => r.GetString(0)).Count > 0)
        {
            yield return new FolderProblem(
                "",
                null,
                ProblemWeight.LeftOut,
                "The last import was cut short, so some recordings may be missing: import the squad folder again."
            );
        }
    }

    /// <summary>A tightened limit that can't be read any more must not loosen unseen.</summary>
    private static IEnumerable<FolderProblem> Damaged(SquadFolder? kept, List<KeptFile> files)
    {
        if (kept is null && files.Count > 0)
        {
            yield return new FolderProblem(
                "",
                null,
                ProblemWeight.StopsPlanning,
                "The squad's own files in the store are damaged, so overrides of limits, own exercises and counted practices can't be "
                    + "read: import the squad folder again."
            );
        }
    }

    /// <summary>Recordings that were measured and count nowhere: nobody's, of no day, or the same bytes once more.</summary>
    private static List<FolderProblem> Strays(PlainReader plain)
    {
        var first = new Dictionary<(string, string), string>();
        return plain.Rows(
            """
            WITH odd AS (
              SELECT id FROM measurement WHERE refusal IS NULL
                AND (athlete_id IS NULL OR date IS NULL OR athlete_id NOT IN (SELECT id FROM athlete))
              UNION
              SELECT measurement_id FROM recording
              WHERE sha256 IN (SELECT sha256 FROM recording GROUP BY sha256 HAVING COUNT(*) > 1)
            )
            SELECT r.file, m.sha256, m.athlete_id, m.date, m.athlete_id IN (SELECT id FROM athlete)
            FROM odd JOIN measurement m ON m.id = odd.id JOIN recording r ON r.measurement_id = m.id
            WHERE m.refusal IS NULL ORDER BY r.position
            """,
            r =>
            {
                string file = r.GetString(0);
                string? athlete = PlainReader.Text(r, 2);
                string? what =
                    athlete is null ? "was measured but names no athlete: give it a row in trials.csv"
                    : !r.GetBoolean(4)
                        ? $"was measured but its athlete '{athlete}' is nobody's id in athletes.csv: correct the id in trials.csv"
                    : r.IsDBNull(3) ? "was measured but has no date: write it in trials.csv"
                    : first.TryAdd((r.GetString(1), athlete), file) ? null
                    : $"holds the same bytes as {first[(r.GetString(1), athlete)]}; it counts once";
                return what is null
                    ? null
                    : new FolderProblem(file, null, ProblemWeight.LeftOut, $"{file}: {what}.", athlete);
            }
        );
    }

    private sealed record KeptFile(string Name, RawRow? Raw);
}
