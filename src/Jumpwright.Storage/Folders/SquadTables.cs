namespace Jumpwright.Storage.Folders;

/// <summary>The names of a squad's own files (contracts §4).</summary>
public static class SquadTables
{
    public const string Squad = "squad.yaml";
    public const string Fixtures = "fixtures.ics";
    public const string Athletes = "athletes.csv";
    public const string Trials = "trials.csv";
    public const string Completed = "completed.csv";
    public const string Screens = "screens.csv";
    public const string Symptoms = "symptoms.csv";
    public const string Restrictions = "restrictions.csv";

    public const string Overrides = "overrides.csv";

    /// <summary>The folder in which a coach keeps exercises of their own, one JSON file each.</summary>
    public const string ExercisesFolder = "exercises";

    /// <summary>The folder beside trials.csv in which a squad keeps its recordings.</summary>
    public const string RecordingsFolder = "recordings";

    /// <summary>The tables; a reader of recordings skips them.</summary>
    public static IReadOnlyList<string> Csv { get; } =
    [Athletes, Trials, Completed, Screens, Symptoms, Restrictions, Overrides];

    /// <summary>All files that describe a squad, in the order in which they are read.</summary>
    public static IReadOnlyList<string> All { get; } =
    [Squad, Fixtures, Athletes, Trials, Completed, Screens, Symptoms, Restrictions, Overrides];
}
