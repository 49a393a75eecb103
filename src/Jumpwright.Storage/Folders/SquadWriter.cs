using System.Globalization;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders.Calendars;
using Jumpwright.Storage.Folders.Csv;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Storage.Folders;

/// <summary>
/// Begins a squad in a folder and adds to it: an athlete, a training window, kit. What a person wrote there stays as it is, and what
/// can't be added in that way is refused with what to do.
/// </summary>
public static class SquadWriter
{
    /// <summary>Columns of a new athletes.csv.</summary>
    public static IReadOnlyList<string> AthleteColumns => TableSchema.Athletes.Columns;

    /// <summary>Whether the folder holds a squad already.</summary>
    public static bool IsSquad(string folder) =>
        File.Exists(Path.Combine(folder, SquadTables.Squad)) || File.Exists(Path.Combine(folder, SquadTables.Athletes));

    /// <summary>Begins a squad: a name, a time zone, nobody in it. A folder that holds one stays as it is.</summary>
    public static void Begin(string folder, string name, string timeZone)
    {
        Directory.CreateDirectory(folder);
        if (IsSquad(folder))
        {
            return;
        }

        File.WriteAllText(
            Path.Combine(folder, SquadTables.Squad),
            $"name: {Quoted(name)}\ntime_zone: {timeZone}\nkit: []\nwindows: []\n"
        );
        File.WriteAllText(Path.Combine(folder, SquadTables.Athletes), string.Join(',', AthleteColumns) + "\n");
    }

    /// <summary>Adds an athlete under a new id.</summary>
    /// <param name="folder">The squad folder.</param>
    /// <param name="cells">Cells by column; the id is made here.</param>
    /// <returns>The id.</returns>
    public static Outcome<string> AddAthlete(string folder, IReadOnlyDictionary<string, string> cells)
    {
        string path = Path.Combine(folder, SquadTables.Athletes);
        byte[] table = File.Exists(path)
            ? File.ReadAllBytes(path)
            : Encoding.UTF8.GetBytes(string.Join(',', AthleteColumns) + "\n");
        if (string.IsNullOrWhiteSpace(cells.GetValueOrDefault("name")))
        {
            return new Refusal("Write the athlete's name, as it shall stand on the card.");
        }

        HashSet<string> taken = new(
            RowCutter.Records(Encoding.UTF8.GetString(table)).Select(r => r.Split(',', ';', '\t')[0].Trim().Trim('"')),
            StringComparer.OrdinalIgnoreCase
        );
        int n = 1;
        while (taken.Contains(Id(n)))
        {
            n++;
        }

        var row = new Dictionary<string, string>(cells, StringComparer.Ordinal) { ["id"] = Id(n) };
        WholeFile.Replace(path, RowAppender.With(table, row));
        return Id(n);

        static string Id(int number) => "a" + number.ToString("00", CultureInfo.InvariantCulture);
    }

    /// <summary>Adds a training window.</summary>
    public static Outcome<bool> AddWindow(string folder, IsoDayOfWeek day, LocalTime start, int minutes) =>
        minutes is < 10 or > 240
            ? new Refusal("A session takes 10 to 240 minutes.")
            : Edit(
                folder,
                text =>
                    SquadYamlEditor.With(
                        text,
                        "windows",
                        ("day", day.ToString().ToLowerInvariant()),
                        ("start", LocalTimePattern.CreateWithInvariantCulture("HH:mm").Format(start)),
                        ("minutes", minutes.ToString(CultureInfo.InvariantCulture))
                    )
            );

    /// <summary>Says how many of a piece of kit there are.</summary>
    public static Outcome<bool> SetKit(string folder, string id, int count) =>
        count is < 0 or > 99
            ? new Refusal("A count of kit is 0 to 99.")
            : Edit(folder, text => SquadYamlEditor.WithKit(text, id, count.ToString(CultureInfo.InvariantCulture)));

    private static Outcome<bool> Edit(string folder, Func<string, Outcome<string>> edit) =>
        (File.Exists(Path.Combine(folder, SquadTables.Squad)) ? SquadFolderEditor.SquadYaml(folder) : "")
            .Then(edit)
            .Then(text => SquadFolderEditor.Keep(folder, text));

    private static string Quoted(string text) =>
        "\""
        + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)
        + "\"";
}
