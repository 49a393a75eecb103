using System.Collections.Immutable;
using System.Text;
using Jumpwright.Quantities;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Jumpwright.Storage.Folders.Calendars;

/// <summary>
/// Adds entries to the lists of squad.yaml and takes them out, and leaves every other line, comments included, as its keeper
/// wrote it. What comes out is read again; where that has faults that were not there before, nothing is changed.
/// </summary>
public static class SquadYamlEditor
{
    /// <summary>The lists that can be edited.</summary>
    public static ImmutableArray<string> Sections { get; } = ["kit", "windows", "practices", "fixtures"];

    /// <summary>Entries of a list as they stand, field by field.</summary>
    public static ImmutableArray<ImmutableArray<KeyValuePair<string, string>>> Entries(string text, string section) =>
        List(text, section) is { } list ? [.. list.Children.OfType<YamlMappingNode>().Select(Fields)] : [];

    /// <summary>The text with one entry more at the end of the list.</summary>
    /// <param name="text">squad.yaml.</param>
    /// <param name="section">One of <see cref="Sections"/>.</param>
    /// <param name="fields">Fields with their values; empty ones are left out.</param>
    public static Outcome<string> With(string text, string section, params (string Name, string Value)[] fields)
    {
        string entry =
            "- {"
            + string.Join(", ", fields.Where(f => f.Value.Length > 0).Select(f => $"{f.Name}: {Quoted(f.Value)}"))
            + "}";
        List<string> lines = [.. text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')];
        if (Key(text, section) is not var (key, value))
        {
            lines.AddRange([section + ":", "  " + entry]);
            return Checked(text, lines);
        }

        int at = (int)key.Start.Line - 1;
        if (value is YamlSequenceNode { Children: { Count: > 0 } children })
        {
            if (IsFlow(value))
            {
                return InOneLine(section);
            }

            int last = (int)children[^1].Start.Line - 1;
            int end = Last(children[^1], last);
            string indent = new(' ', lines[last].Length - lines[last].TrimStart().Length);
            lines.Insert(end + 1, indent + entry);
            return Checked(text, lines);
        }

        // "kit:" with nothing behind it, or "kit: []".
        lines[at] = section + ":";
        lines.Insert(at + 1, "  " + entry);
        return Checked(text, lines);
    }

    /// <summary>The text with that count of a kit: where it stands already only its number changes, else it is one entry more.</summary>
    /// <param name="text">squad.yaml.</param>
    /// <param name="id">Id of the kit.</param>
    /// <param name="count">A whole number, as it is to be written.</param>
    public static Outcome<string> WithKit(string text, string id, string count)
    {
        YamlScalarNode[] counts =
        [
            .. (List(text, "kit")?.Children ?? [])
                .OfType<YamlMappingNode>()
                .Where(c =>
                    c.Children.Any(f =>
                        f is { Key: YamlScalarNode { Value: "id" }, Value: YamlScalarNode v } && v.Value == id
                    )
                )
                .SelectMany(c => c.Children)
                .Where(f => f.Key is YamlScalarNode { Value: "count" })
                .Select(f => f.Value)
                .OfType<YamlScalarNode>(),
        ];
        if (counts.Length == 0)
        {
            return With(text, "kit", ("id", id), ("count", count));
        }

        List<string> lines = [.. text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')];
        // From the back, so that the places of those before stay where they were read.
        foreach (YamlScalarNode old in counts.OrderByDescending(c => c.Start.Index))
        {
            int at = (int)old.Start.Line - 1;
            string line = lines[at];
            lines[at] = line[..((int)old.Start.Column - 1)] + Quoted(count) + line[((int)old.End.Column - 1)..];
        }

        return Checked(text, lines);
    }

    /// <summary>The text without the first entry that holds just these fields.</summary>
    public static Outcome<string> Without(string text, string section, string entry)
    {
        if (List(text, section) is not { } list)
        {
            return Gone;
        }

        YamlMappingNode? found = list.Children.OfType<YamlMappingNode>().FirstOrDefault(c => Written(c) == entry);
        if (found is null)
        {
            return Gone;
        }

        if (IsFlow(list))
        {
            return InOneLine(section);
        }

        List<string> lines = [.. text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')];
        int first = (int)found.Start.Line - 1;
        int last = Last(found, first);
        lines.RemoveRange(first, last - first + 1);
        if (list.Children.Count == 1)
        {
            int key = (int)Key(text, section)!.Value.Key.Start.Line - 1;
            lines[key] = section + ": []";
        }

        return Checked(text, lines);
    }

    /// <summary>An entry as one text, by which it is found again.</summary>
    public static string Written(IEnumerable<KeyValuePair<string, string>> fields) =>
        string.Join("\n", fields.Select(f => f.Key + "=" + f.Value));

    private static string Written(YamlMappingNode entry) => Written(Fields(entry));

    private static Refusal Gone => new("That entry is not there any more: look at the page anew.");

    private static Refusal InOneLine(string section) =>
        new($"{section} is written in one line in {SquadTables.Squad}: edit it there, one entry a line.");

    private static ImmutableArray<KeyValuePair<string, string>> Fields(YamlMappingNode entry) =>
        [
            .. entry
                .Children.Where(c => c is { Key: YamlScalarNode, Value: YamlScalarNode })
                .Select(c =>
                    KeyValuePair.Create(((YamlScalarNode)c.Key).Value ?? "", ((YamlScalarNode)c.Value).Value ?? "")
                ),
        ];

    /// <summary>Always in quotation marks but for plain words and whole numbers, so that no text can mean anything else.</summary>
    private static string Quoted(string value)
    {
        bool plain =
            value.Length > 0
            && value.All(c => char.IsAsciiLetterOrDigit(c) || c == '-')
            && char.IsAsciiLetterOrDigit(value[0]);
        if (plain && value is not ("true" or "false" or "null" or "yes" or "no" or "on" or "off"))
        {
            return value;
        }

        var quoted = new StringBuilder("\"");
        foreach (char c in value)
        {
            _ =
                c is '"' or '\\' ? quoted.Append('\\').Append(c)
                : char.IsControl(c) || char.IsSurrogate(c) || c is '\u2028' or '\u2029' or '\uFEFF'
                    ? quoted.Append(System.Globalization.CultureInfo.InvariantCulture, $"\\u{(int)c:X4}")
                : quoted.Append(c);
        }

        return quoted.Append('"').ToString();
    }

    private static bool IsFlow(YamlNode node) =>
        node is YamlSequenceNode { Style: YamlDotNet.Core.Events.SequenceStyle.Flow };

    /// <summary>The last line of an entry: that of its last value.</summary>
    private static int Last(YamlNode entry, int first) =>
        entry.AllNodes.Max(n => n is YamlScalarNode ? (int)n.End.Line - 1 : first) is var last && last > first
            ? last
            : first;

    private static YamlSequenceNode? List(string text, string section) =>
        Key(text, section) is var (_, value) ? value as YamlSequenceNode : null;

    private static (YamlNode Key, YamlNode Value)? Key(string text, string section)
    {
        try
        {
            var stream = new YamlStream();
            stream.Load(new StringReader(text));
            if (stream.Documents is [{ RootNode: YamlMappingNode root }, ..])
            {
                foreach ((YamlNode key, YamlNode value) in root.Children)
                {
                    if (key is YamlScalarNode { Value: { } name } && name == section)
                    {
                        return (key, value);
                    }
                }
            }
        }
        catch (YamlException)
        {
            // The page of the squad says what is wrong with the file; here nothing is found in it.
        }

        return null;
    }

    private static Outcome<string> Checked(string before, List<string> lines)
    {
        string text = string.Join('\n', lines) + "\n";
        var (was, now) = (Faults(before), Faults(text));
        return now.FirstOrDefault(f => !was.Contains(f)) is { } fault ? new Refusal(fault) : text;
    }

    /// <summary>Faults without their lines, which move.</summary>
    private static HashSet<string> Faults(string text)
    {
        var problems = new ProblemList();
        new SquadYaml(problems).Read("squad", Encoding.UTF8.GetBytes(text));
        return
        [
            .. problems.Select(p =>
                p.Line is { } line ? p.Sentence.Replace($" line {line}", "", StringComparison.Ordinal) : p.Sentence
            ),
        ];
    }
}
