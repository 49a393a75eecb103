using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Athletes;
using NodaTime;
using NodaTime.Text;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Jumpwright.Storage.Folders.Calendars;

/// <summary>
/// squad.yaml. Kit or a window that can't be read is left out (less kit, less time); a fixture, a policy or a time zone
/// that can't be read stops planning, since leaving it out would open what it closes.
/// </summary>
internal sealed class SquadYaml(ProblemList problems)
{
    private static readonly string[] Keys =
    [
        "name",
        "time_zone",
        "kit",
        "windows",
        "practices",
        "fixtures",
        "weather",
        "policy",
    ];

    /// <summary>The squad of a folder without a readable squad.yaml: no window, so no session.</summary>
    public static Squad Empty(string name) =>
        new(name, "Etc/UTC", [], [], [], ImmutableDictionary<string, string>.Empty);

    public Squad Read(string folderName, ReadOnlySpan<byte> bytes)
    {
        string? text = Csv.TableText.Decode(SquadTables.Squad, bytes, ProblemWeight.StopsPlanning, problems);
        YamlMappingNode? root = text is null ? null : Root(text);
        if (root is null)
        {
            return Empty(folderName);
        }

        foreach (YamlNode key in root.Children.Keys)
        {
            string? written = (key as YamlScalarNode)?.Value;
            if (!Keys.Contains(written, StringComparer.Ordinal))
            {
                Add(
                    key,
                    ProblemWeight.Note,
                    $"'{written}' is not known and was not read; known are {string.Join(", ", Keys)}"
                );
            }
        }

        string name = Scalar(root, "name") ?? folderName;
        return new Squad(name, TimeZone(root), Kit(root), Windows(root), Fixtures(root), Policy(root))
        {
            Practices = Practices(root),
            Weather = Weather(root),
        };
    }

    private YamlMappingNode? Root(string text)
    {
        try
        {
            if (IsTooDeep(text))
            {
                throw new YamlException("nested too deep");
            }

            var stream = new YamlStream();
            stream.Load(new StringReader(text));
            if (stream.Documents.Count > 0 && stream.Documents[0].RootNode is YamlMappingNode root)
            {
                return root;
            }

            problems.Add(
                SquadTables.Squad,
                1,
                ProblemWeight.StopsPlanning,
                "must hold keys and values, for example 'name: Riverside Club'. Nothing is planned until then."
            );
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The parser also throws other things than its own exception on some broken files.
            int? line = e is YamlException { Start.Line: > 0 } yaml ? (int)yaml.Start.Line : null;
            problems.Add(
                SquadTables.Squad,
                line,
                ProblemWeight.StopsPlanning,
                (line is null ? "is no YAML" : "is no YAML from here on")
                    + " (often an indent, a tab, or a colon in a text without quotation marks). "
                    + "Nothing is planned until it is corrected."
            );
        }

        return null;
    }

    /// <summary>The parser's tree is built by recursion; thousands of brackets would end the process.</summary>
    private static bool IsTooDeep(string text)
    {
        var parser = new Parser(new StringReader(text));
        for (int depth = 0; parser.MoveNext(); )
        {
            depth += parser.Current?.NestingIncrease ?? 0;
            if (depth > 32)
            {
                return true;
            }
        }

        return false;
    }

    private string TimeZone(YamlMappingNode root)
    {
        string? zone = Scalar(root, "time_zone");
        if (zone is not null && DateTimeZoneProviders.Tzdb.GetZoneOrNull(zone) is not null)
        {
            return zone;
        }

        Add(
            root.Children.Keys.FirstOrDefault(k => k is YamlScalarNode { Value: "time_zone" }) ?? root,
            ProblemWeight.StopsPlanning,
            (zone is null ? "time_zone is missing" : $"the time zone '{zone}' is not known")
                + ", and recovery is counted in hours: write an IANA name, for example Europe/Paris"
        );
        return "Etc/UTC";
    }

    private ImmutableArray<KitCount> Kit(YamlMappingNode root)
    {
        var kit = new List<KitCount>();
        foreach (YamlMappingNode item in Items(root, "kit", ProblemWeight.LeftOut))
        {
            string? id = Scalar(item, "id");
            if (
                id is null
                || !int.TryParse(Scalar(item, "count"), NumberStyles.None, CultureInfo.InvariantCulture, out int count)
            )
            {
                Add(
                    item,
                    ProblemWeight.LeftOut,
                    "kit needs an id and a whole count, for example {id: plyo-box, count: 3}; it counts as not there"
                );
                continue;
            }

            kit.Add(new KitCount(id.ToLowerInvariant(), count));
        }

        foreach (
            IGrouping<string, KitCount> twice in kit.GroupBy(k => k.Id, StringComparer.Ordinal)
                .Where(g => g.Count() > 1)
        )
        {
            Add(root, ProblemWeight.Note, $"kit lists '{twice.Key}' more than once; the smallest count was taken");
        }

        return kit.GroupBy(k => k.Id, StringComparer.Ordinal)
            .Select(g => new KitCount(g.Key, g.Min(k => k.Count)))
            .ToImmutableArray();
    }

    private ImmutableArray<TrainingWindow> Windows(YamlMappingNode root)
    {
        var windows = new List<TrainingWindow>();
        foreach (YamlMappingNode item in Items(root, "windows", ProblemWeight.LeftOut))
        {
            if (Day(item) is { } day && Time(item) is { } start && Minutes(item) is { } minutes)
            {
                windows.Add(new TrainingWindow(day, start, minutes) { Surface = SurfaceOf(item) });
            }
            else
            {
                Add(
                    item,
                    ProblemWeight.LeftOut,
                    "a window needs a day, a start and minutes, for example {day: monday, start: \"17:00\", minutes: 45}; it was left out"
                );
            }
        }

        return windows.ToImmutableArray();
    }

    /// <summary>A surface nobody knows counts as hard, which is said.</summary>
    private Surface? SurfaceOf(YamlMappingNode item)
    {
        if (Scalar(item, "surface") is not { } word)
        {
            return null;
        }

        Surface surface = Surfaces.Of(word);
        if (surface == Surface.Unknown)
        {
            Add(
                item,
                ProblemWeight.Note,
                $"the surface '{word}' is not known and counts as hard; known are {string.Join(", ", Surfaces.Words)}"
            );
        }

        return surface;
    }

    private ImmutableArray<Weather> Weather(YamlMappingNode root)
    {
        var days = new List<Weather>();
        foreach (YamlMappingNode item in Items(root, "weather", ProblemWeight.StopsPlanning))
        {
            ParseResult<LocalDate> date = LocalDatePattern.Iso.Parse(Scalar(item, "date") ?? "");
            if (
                date.Success
                && Number(item, "air_c", -40, 60) is { } air
                && Number(item, "humidity_pct", 0, 100) is { } humidity
            )
            {
                days.Add(new Weather(date.Value, air, humidity));
            }
            else
            {
                Add(
                    item,
                    ProblemWeight.StopsPlanning,
                    "weather needs a date, air_c (-40 to 60) and humidity_pct (0 to 100), for example "
                        + "{date: 2027-07-04, air_c: 31, humidity_pct: 55}; until then nobody knows whether that day is too hot"
                );
            }
        }

        return days.ToImmutableArray();
    }

    private ImmutableArray<Practice> Practices(YamlMappingNode root)
    {
        var practices = new List<Practice>();
        foreach (YamlMappingNode item in Items(root, "practices", ProblemWeight.LeftOut))
        {
            if (Day(item) is not { } day)
            {
                Add(
                    item,
                    ProblemWeight.LeftOut,
                    "a practice needs a day, for example {day: tuesday, start: \"19:00\", minutes: 90, sport: volleyball}; it was left out"
                );
                continue;
            }

            practices.Add(
                new Practice(day, Time(item), Minutes(item), Scalar(item, "sport"))
                {
                    Jumps = Count(item, "jumps"),
                    JumpsSpread = Count(item, "jumps_spread"),
                    Without = Ids(item, "without"),
                }
            );
        }

        return practices.ToImmutableArray();
    }

    private ImmutableArray<Fixture> Fixtures(YamlMappingNode root)
    {
        var fixtures = new List<Fixture>();
        foreach (YamlMappingNode item in Items(root, "fixtures", ProblemWeight.StopsPlanning))
        {
            ParseResult<LocalDate> date = LocalDatePattern.Iso.Parse(Scalar(item, "date") ?? "");
            if (!date.Success)
            {
                Add(
                    item,
                    ProblemWeight.StopsPlanning,
                    "a fixture needs a date, for example {date: 2027-01-09, start: \"15:00\", name: Home match}; "
                        + "until it has one no day is known to be free of it"
                );
                continue;
            }

            LocalTime? start = Time(item);
            if (start is null && Scalar(item, "start") is { } written)
            {
                Add(
                    item,
                    ProblemWeight.Note,
                    $"the start '{written}' is no time (write \"15:00\"); the fixture stands for the whole day"
                );
            }

            fixtures.Add(
                new Fixture(date.Value, start, Scalar(item, "name") ?? "fixture") { Without = Ids(item, "without") }
            );
        }

        return fixtures.ToImmutableArray();
    }

    private ImmutableDictionary<string, string> Policy(YamlMappingNode root)
    {
        if (Child(root, "policy") is not { } node || IsNothing(node))
        {
            return ImmutableDictionary<string, string>.Empty;
        }

        if (node is not YamlMappingNode map)
        {
            Add(node, ProblemWeight.StopsPlanning, "policy must hold keys and values");
            return ImmutableDictionary<string, string>.Empty;
        }

        ImmutableDictionary<string, string>.Builder policy = ImmutableDictionary.CreateBuilder<string, string>(
            StringComparer.Ordinal
        );
        foreach ((YamlNode key, YamlNode value) in map.Children)
        {
            if (key is YamlScalarNode { Value: { } k } && value is YamlScalarNode v)
            {
                policy[k] = v.Value ?? "";
            }
            else
            {
                Add(key, ProblemWeight.StopsPlanning, "a policy must be one key and one plain value");
            }
        }

        return policy.ToImmutable();
    }

    private List<YamlMappingNode> Items(YamlMappingNode root, string key, ProblemWeight whenUnreadable)
    {
        var items = new List<YamlMappingNode>();
        if (Child(root, key) is not { } node || IsNothing(node))
        {
            return items;
        }

        if (node is not YamlSequenceNode list)
        {
            Add(node, whenUnreadable, $"{key} must be a list, each entry beginning with '-'");
            return items;
        }

        foreach (YamlNode child in list.Children)
        {
            if (child is YamlMappingNode map)
            {
                items.Add(map);
            }
            else
            {
                Add(child, whenUnreadable, $"an entry of {key} must hold keys and values");
            }
        }

        return items;
    }

    private static IsoDayOfWeek? Day(YamlMappingNode item) =>
        Scalar(item, "day")?.ToLowerInvariant() switch
        {
            "monday" or "mon" => IsoDayOfWeek.Monday,
            "tuesday" or "tue" => IsoDayOfWeek.Tuesday,
            "wednesday" or "wed" => IsoDayOfWeek.Wednesday,
            "thursday" or "thu" => IsoDayOfWeek.Thursday,
            "friday" or "fri" => IsoDayOfWeek.Friday,
            "saturday" or "sat" => IsoDayOfWeek.Saturday,
            "sunday" or "sun" => IsoDayOfWeek.Sunday,
            _ => null,
        };

    private static LocalTime? Time(YamlMappingNode item)
    {
        ParseResult<LocalTime> time = LocalTimePattern
            .CreateWithInvariantCulture("H:mm")
            .Parse(Scalar(item, "start") ?? "");
        return time.Success ? time.Value : null;
    }

    private static int? Minutes(YamlMappingNode item) =>
        int.TryParse(Scalar(item, "minutes"), NumberStyles.None, CultureInfo.InvariantCulture, out int m)
        && m is > 0 and <= 24 * 60
            ? m
            : null;

    /// <summary>A count of jumps; what can't be read was not counted, and then the cautious estimate stands.</summary>
    private static double? Count(YamlMappingNode item, string key) =>
        double.TryParse(Scalar(item, key), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double n)
        && n is >= 0 and <= 2000
            ? n
            : null;

    /// <summary>A list of ids, or one; what can't be read names nobody, and then everybody takes part.</summary>
    private static ImmutableArray<string> Ids(YamlMappingNode item, string key) =>
        Child(item, key) switch
        {
            YamlSequenceNode list => [.. list.Children.OfType<YamlScalarNode>().Select(c => c.Value?.Trim() ?? "")],
            YamlScalarNode { Value: { Length: > 0 } one } => [one.Trim()],
            _ => [],
        };

    private static double? Number(YamlMappingNode item, string key, double least, double most) =>
        double.TryParse(
            Scalar(item, key),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out double n
        )
        && n >= least
        && n <= most
            ? n
            : null;

    private static YamlNode? Child(YamlMappingNode map, string key) =>
        map.Children.TryGetValue(new YamlScalarNode(key), out YamlNode? node) ? node : null;

    private static bool IsNothing(YamlNode node) => node is YamlScalarNode { Value: null or "" or "~" or "null" };

    private static string? Scalar(YamlMappingNode map, string key) =>
        Child(map, key) is YamlScalarNode { Value: { Length: > 0 } value } && value.Trim() is { Length: > 0 } trimmed
            ? trimmed
            : null;

    private void Add(YamlNode node, ProblemWeight weight, string what) =>
        problems.Add(
            SquadTables.Squad,
            (int)node.Start.Line,
            weight,
            what + (weight == ProblemWeight.StopsPlanning ? ". Nothing is planned until then." : ".")
        );
}
