using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Jumpwright.Storage.Stores.Rows;
using Microsoft.Data.Sqlite;

namespace Jumpwright.Storage.Stores;

/// <summary>Reads one athlete's trials.</summary>
internal static class TrialQueries
{
    /// <summary>
    /// By day, then in the folder's order. One content counts once, however many files hold it; what has no day, or belongs to
    /// nobody of the squad, counts nowhere.
    /// </summary>
    public static ImmutableArray<MeasuredTrial> Of(PlainReader plain, string athleteId)
    {
        var measured = new Dictionary<string, MeasurementRow>(StringComparer.Ordinal);
        var trials = new Dictionary<(string, long), TrialRow>();
        var counted = new HashSet<string>(StringComparer.Ordinal);
        List<(string File, MeasurementRow Row)> files =
        [
            .. plain
                .Rows(
                    """
                    SELECT r.file, m.id, m.sha256, m.version, m.date, m.task, m.body_mass_kg, m.external_load_kg, m.drop_height_m,
                           m.limb, m.note, m.device
                    FROM measurement m JOIN recording r ON r.measurement_id = m.id
                    WHERE m.athlete_id = $athlete AND m.refusal IS NULL AND m.date IS NOT NULL
                      AND EXISTS (SELECT 1 FROM athlete a WHERE a.id = $athlete)
                    ORDER BY r.position
                    """,
                    r => Tuple.Create(r.GetString(0), Measurement(r, athleteId)),
                    ("$athlete", athleteId)
                )
                .Where(f => counted.Add(f.Item2.Sha256))
                .Select(f => (f.Item1, f.Item2)),
        ];
        foreach ((_, MeasurementRow row) in files)
        {
            measured[row.Id] = row;
        }

        Each(
            "t.measurement_id, t.number, t.task, t.onset_s, t.peak_downward_velocity_s, t.bottom_s, t.take_off_s, t.touch_down_s, "
                + "t.first_touch_down_s, t.stable_s",
            "trial",
            (id, r) =>
            {
                var trial = new TrialRow
                {
                    MeasurementId = id,
                    Number = r.GetInt32(1),
                    Task = JumpTasks.Parse(r.GetString(2))!.Value,
                    OnsetS = PlainReader.Number(r, 3),
                    PeakDownwardVelocityS = PlainReader.Number(r, 4),
                    BottomS = PlainReader.Number(r, 5),
                    TakeOffS = PlainReader.Number(r, 6),
                    TouchDownS = PlainReader.Number(r, 7),
                    FirstTouchDownS = PlainReader.Number(r, 8),
                    StableS = PlainReader.Number(r, 9),
                };
                measured[id].Trials.Add(trial);
                trials[(id, trial.Number)] = trial;
            }
        );
        Each(
            "t.measurement_id, t.trial_number, t.position, t.name, t.value, t.unit, t.standard_uncertainty, t.method",
            "measure",
            (id, r) =>
                trials[(id, r.GetInt64(1))]
                    .Measures.Add(
                        new MeasureRow
                        {
                            MeasurementId = id,
                            Position = r.GetInt32(2),
                            Name = plain.Word(r, 3),
                            Value = r.GetDouble(4),
                            Unit = plain.Word(r, 5),
                            StandardUncertainty = r.GetDouble(6),
                            Method = plain.Word(r, 7),
                        }
                    )
        );
        Each(
            "t.measurement_id, t.trial_number, t.position, t.contact_s, t.flight_s, t.reactive_strength_index",
            "contact",
            (id, r) =>
                trials[(id, r.GetInt64(1))]
                    .Contacts.Add(
                        new ContactRow
                        {
                            MeasurementId = id,
                            Position = r.GetInt32(2),
                            ContactS = r.GetDouble(3),
                            FlightS = r.GetDouble(4),
                            ReactiveStrengthIndex = r.GetDouble(5),
                        }
                    )
        );
        Each(
            "t.measurement_id, t.trial_number, t.position, t.kind, t.text",
            "remark",
            (id, r) =>
                trials[(id, r.GetInt64(1))]
                    .Remarks.Add(
                        new RemarkRow
                        {
                            MeasurementId = id,
                            Position = r.GetInt32(2),
                            Kind = Enum.Parse<RemarkKind>(r.GetString(3)),
                            Text = plain.Word(r, 4),
                        }
                    )
        );
        return
        [
            .. files
                .SelectMany(f => f.Row.Trials.OrderBy(t => t.Number).Select(t => TrialRows.ToTrial(f.File, f.Row, t)))
                .OrderBy(t => t.Date),
        ];

        void Each(string columns, string table, Action<string, SqliteDataReader> take)
        {
            string? last = null;
            plain.Rows<object>(
                $"SELECT {columns} FROM measurement m JOIN {table} t ON t.measurement_id = m.id WHERE m.athlete_id = $athlete",
                r =>
                {
                    // A measurement's rows stand together; what an older version measured, and a copy, counts nowhere.
                    string id = r.GetString(0);
                    last = id == last ? last : id;
                    if (measured.ContainsKey(last))
                    {
                        take(last, r);
                    }

                    return null;
                },
                ("$athlete", athleteId)
            );
        }
    }

    private static MeasurementRow Measurement(SqliteDataReader r, string athleteId) =>
        new()
        {
            Id = r.GetString(1),
            Sha256 = r.GetString(2),
            Version = r.GetString(3),
            Manifest = "",
            AthleteId = athleteId,
            Date = PlainReader.Day(r, 4),
            Task = JumpTasks.Parse(PlainReader.Text(r, 5)),
            BodyMassKg = PlainReader.Number(r, 6),
            ExternalLoadKg = PlainReader.Number(r, 7),
            DropHeightM = PlainReader.Number(r, 8),
            Limb = PlainReader.Text(r, 9) is { } limb ? Enum.Parse<Limb>(limb) : null,
            Note = PlainReader.Text(r, 10),
            Device = Enum.Parse<Device>(r.GetString(11)),
        };
}
