using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders.Csv;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Storage.Folders;

/// <summary>
/// Begins a squad in a folder and adds to it: an athlete, a training window, kit. What a person wrote there stays as it is, and what
/// can't be added in that way is refused with what to do.
/// </summary>
public static partial class SquadWriter
{
    /// <summary>Columns of a new athletes.csv.</summary>
    public static IReadOnlyList<string> AthleteColumns { get; } =
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
    ];

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
        Replace(path, RowAppender.With(table, row));
        return Id(n);

        static string Id(int number) => "a" + number.ToString("00", CultureInfo.InvariantCulture);
    }

    /// <summary>Adds a training window.</summary>
    public static Outcome<bool> AddWindow(string folder, IsoDayOfWeek day, LocalTime start, int minutes) =>
        minutes is < 10 or > 240
            ? new Refusal("A session takes 10 to 240 minutes.")
            : Edit(
                folder,
                lines =>
                    Add(
                        lines,
                        "windows",
                        $"{{day: {day.ToString().ToLowerInvariant()}, start: \"{LocalTimePattern.CreateWithInvariantCulture("HH:mm").Format(start)}\", minutes: {minutes.ToString(CultureInfo.InvariantCulture)}}}"
                    )
            );

    /// <summary>Says how many of a piece of kit there are.</summary>
    public static Outcome<bool> SetKit(string folder, string id, int count) =>
        count is < 0 or > 99
            ? new Refusal("A count of kit is 0 to 99.")
            : Edit(
                folder,
                lines =>
                {
                    string number = count.ToString(CultureInfo.InvariantCulture);
                    for (int i = 0; i < lines.Count; i++)
                    {
                        if (KitLine().Match(lines[i]) is { Success: true } match && match.Groups["id"].Value == id)
                        {
                            lines[i] = match.Groups["before"].Value + number + match.Groups["after"].Value;
                            return null;
                        }
                    }

                    return Add(lines, "kit", $"{{id: {id}, count: {number}}}");
                }
            );

    private static Outcome<bool> Edit(string folder, Func<List<string>, Refusal?> edit)
    {
        string path = Path.Combine(folder, SquadTables.Squad);
        List<string> lines = File.Exists(path) ? [.. File.ReadAllLines(path)] : [];
        if (edit(lines) is { } refusal)
        {
            return refusal;
        }

        Replace(path, Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n"));
        return true;
    }

    /// <summary>Adds an item at the end of a list that stands line by line; one that stands otherwise is its keeper's to edit.</summary>
    private static Refusal? Add(List<string> lines, string key, string item)
    {
        int at = lines.FindIndex(l => l.StartsWith(key + ":", StringComparison.Ordinal));
        if (at < 0)
        {
            lines.AddRange([key + ":", "  - " + item]);
            return null;
        }

        string rest = lines[at][(key.Length + 1)..].Split('#')[0].Trim();
        if (rest == "[]")
        {
            lines[at] = key + ":";
        }
        else if (rest.Length > 0)
        {
            return new Refusal(
                $"squad.yaml writes {key} in one line, which is not changed from here: edit it in the file."
            );
        }

        int last = at;
        string indent = "  ";
        for (int i = at + 1; i < lines.Count && (lines[i].Length == 0 || lines[i][0] is ' ' or '-' or '#'); i++)
        {
            if (lines[i].TrimStart().StartsWith("- ", StringComparison.Ordinal))
            {
                indent = lines[i][..lines[i].IndexOf('-', StringComparison.Ordinal)];
            }

            if (lines[i].Trim().Length > 0 && lines[i][0] != '#')
            {
                last = i;
            }
        }

        lines.Insert(last + 1, indent + "- " + item);
        return null;
    }

    private static string Quoted(string text) =>
        "\""
        + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)
        + "\"";

    /// <summary>A kill leaves the old file or the new one, never half of it.</summary>
    private static void Replace(string path, byte[] bytes)
    {
        File.WriteAllBytes(path + ".new", bytes);
        File.Move(path + ".new", path, overwrite: true);
    }

    [GeneratedRegex(
        @"^(?<before>\s*-\s*\{\s*id:\s*(?<id>[a-z0-9-]+)\s*,\s*count:\s*)\d+(?<after>\s*\}.*)$",
        RegexOptions.None,
        1000
    )]
    private static partial Regex KitLine();
}
