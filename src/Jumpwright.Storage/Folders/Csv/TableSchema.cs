using System.Collections.Immutable;

namespace Jumpwright.Storage.Folders.Csv;

/// <summary>The columns of a squad table (docs/squad-folder.md).</summary>
/// <param name="File">Its file.</param>
/// <param name="WhenUnreadable">What it does if nothing of the file can be trusted.</param>
/// <param name="Columns">All columns, in order.</param>
/// <param name="Required">Those without which a safety fact could be lost unseen.</param>
internal sealed record TableSchema(
    string File,
    ProblemWeight WhenUnreadable,
    ImmutableArray<string> Columns,
    ImmutableArray<string> Required
)
{
    public string Header => string.Join(',', Columns);

    public static readonly TableSchema Athletes = new(
        SquadTables.Athletes,
        ProblemWeight.StopsPlanning,
        [
            "id",
            "name",
            "birth_date",
            "sex",
            "body_mass_kg",
            "stature_m",
            "sport",
            "level",
            "operation_date",
            "operation_site",
            "operation_side",
            "note",
        ],
        ["id", "operation_site"]
    );

    public static readonly TableSchema Trials = new(
        SquadTables.Trials,
        ProblemWeight.LeftOut,
        [
            "file",
            "athlete",
            "date",
            "task",
            "body_mass_kg",
            "external_load_kg",
            "drop_height_m",
            "limb",
            "plates",
            "frames_per_second",
        ],
        ["file"]
    );

    public static readonly TableSchema Completed = new(
        SquadTables.Completed,
        ProblemWeight.StopsPlanning,
        [
            "athlete",
            "date",
            "session",
            "exercise",
            "sets",
            "reps",
            "contacts",
            "landing_faults",
            "pain_during",
            "pain_next_morning",
            "effort_rpe",
            "drop_height_m",
            "note",
            "set",
            "height_m",
            "contact_time_s",
            "session_minutes",
            "pain_site_new",
        ],
        ["athlete", "date", "exercise"]
    );

    public static readonly TableSchema Screens = new(
        SquadTables.Screens,
        ProblemWeight.StopsPlanning,
        ["athlete", "date", "test", "side", "value", "unit", "trial", "assessor", "note"],
        ["athlete", "date", "test", "value", "unit"]
    );

    public static readonly TableSchema Symptoms = new(
        SquadTables.Symptoms,
        ProblemWeight.StopsPlanning,
        ["athlete", "date", "site", "side", "tissue", "named_by", "kind", "when", "score_0_10", "note"],
        ["athlete", "date", "site", "kind", "when", "score_0_10"]
    );

    public static readonly TableSchema Overrides = new(
        SquadTables.Overrides,
        ProblemWeight.StopsPlanning,
        ["limit", "athlete", "value", "who", "reason", "from", "until"],
        ["limit", "value", "who", "reason", "until"]
    );

    public static readonly TableSchema Restrictions = new(
        SquadTables.Restrictions,
        ProblemWeight.StopsPlanning,
        ["athlete", "from", "until", "site", "side", "allowed", "forbidden", "limit", "set_by", "role", "note"],
        ["athlete", "from", "until", "allowed", "forbidden", "limit", "set_by", "role"]
    );
}
