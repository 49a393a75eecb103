using System.Reflection;
using System.Text;
using Jumpwright.App.Intake;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Tests.Outside.House;

/// <summary>
/// docs/refusals.md, made from the code: every method and constant of the classes that hold the sentences, called with example
/// values. So no sentence can be missing from the page or stand there in other words.
/// </summary>
internal static class RefusalsPage
{
    private static readonly Assembly Core = typeof(Measure).Assembly;

    /// <summary>The classes that hold sentences, and the heading under which the page puts them.</summary>
    private static readonly (string Type, Assembly From, string Heading, string Where)[] Rooms =
    [
        (
            "Jumpwright.App.Intake.IntakeRefusals",
            typeof(IntakeRefusals).Assembly,
            "Opening a file",
            "Before a byte is read as a recording."
        ),
        (
            "Jumpwright.Storage.Folders.FolderRefusals",
            typeof(RecordingFolder).Assembly,
            "Opening a folder",
            "Folders and manifests."
        ),
        (
            "Jumpwright.Recordings.Refusals",
            Core,
            "Reading a CSV",
            "Force, interval and frame recordings; what can't be read without guessing."
        ),
        ("Jumpwright.Recordings.C3d.C3dRefusals", Core, "Reading a C3D file", "See [C3D files](c3d.md)."),
        (
            "Jumpwright.Trials.Refusals",
            Core,
            "Measuring",
            "The recording was read, but what it holds can't be trusted or holds no such trial."
        ),
        (
            "Jumpwright.Recordings.Repairs",
            Core,
            "Repaired while reading a CSV",
            "The recording is measured; the sentence stands in its `warnings`."
        ),
        (
            "Jumpwright.Recordings.C3d.C3dRepairs",
            Core,
            "Chosen or corrected while reading a C3D file",
            "The recording is measured; the sentence stands in its `warnings`."
        ),
        (
            "Jumpwright.Trials.Cautions",
            Core,
            "Warned about while measuring",
            "The trial is measured; what must not be decided from is named in its `doubtful`."
        ),
    ];

    /// <summary>All classes of the program whose name says that they hold such sentences for recordings.</summary>
    public static string[] ClassesInTheCode =>
        [
            .. Core.GetTypes()
                .Where(t => t.Namespace is { } room && (room.Contains("Recordings") || room.Contains("Trials")))
                .Concat(typeof(IntakeRefusals).Assembly.GetTypes().Where(t => t.Namespace == "Jumpwright.App.Intake"))
                .Where(t =>
                    t.Name.EndsWith("Refusals", StringComparison.Ordinal)
                    || t.Name.EndsWith("Repairs", StringComparison.Ordinal)
                    || t.Name.EndsWith("Cautions", StringComparison.Ordinal)
                )
                .Select(t => t.FullName!),
        ];

    public static string[] ClassesOnThePage => [.. Rooms.Select(r => r.Type)];

    /// <summary>Every sentence with which something is refused, by class and name.</summary>
    public static IEnumerable<(string Name, string Sentence)> Refusals =>
        Rooms
            .Where(r => r.Type.EndsWith("Refusals", StringComparison.Ordinal))
            .SelectMany(r => Sentences(r.From.GetType(r.Type, throwOnError: true)!));

    /// <summary>The same, and every sentence with which something is repaired or warned of.</summary>
    public static IEnumerable<(string Name, string Sentence)> EverySentence =>
        Rooms.SelectMany(r => Sentences(r.From.GetType(r.Type, throwOnError: true)!));

    public static string Write()
    {
        var page = new StringBuilder(
            """
            # Refusals and repairs

            A recording that can't be trusted is refused: it is kept untouched, no measure of it is stored, and one sentence says what is
            wrong, where, and what to do. What can be repaired without guessing is measured, with a warning. One bad file never stops
            the others. Here is every sentence there is, with example values. This page is made from the code; a test fails if
            they differ, and makes it anew with `JUMPWRIGHT_WRITE_DOCS=1`.

            """
        );
        foreach ((string type, Assembly from, string heading, string where) in Rooms)
        {
            (string Name, string Sentence)[] sentences = [.. Sentences(from.GetType(type, throwOnError: true)!)];
            bool refusals = type.EndsWith("Refusals", StringComparison.Ordinal);
            page.Append($"\n## {heading}\n\n{where}\n\n");
            page.Append(refusals ? "| what is wrong | what to do |\n|---|---|\n" : "| sentence |\n|---|\n");
            foreach ((_, string sentence) in sentences)
            {
                page.Append(refusals ? Row(sentence) : $"| {Cell(sentence)} |\n");
            }
        }

        return page.ToString();
    }

    private static string Row(string sentence)
    {
        int colon = sentence.LastIndexOf(": ", StringComparison.Ordinal);
        int semicolon = sentence.LastIndexOf("; ", StringComparison.Ordinal);
        int at = colon >= 0 ? colon : semicolon;
        return at < 0
            ? $"| {Cell(sentence)} | |\n"
            : $"| {Cell(sentence[..(at + 1)])} | {Cell(sentence[(at + 2)..])} |\n";
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);

    /// <summary>Every refusal of a recording there is, with example values.</summary>
    public static IEnumerable<(string Name, Refusal Refusal)> EveryRefusal =>
        Rooms
            .SelectMany(r => Made(r.From.GetType(r.Type, throwOnError: true)!))
            .Where(m => m.Made is Refusal)
            .Select(m => (m.Name, (Refusal)m.Made!));

    private static IEnumerable<(string Name, string Sentence)> Sentences(Type type)
    {
        foreach ((string name, object? made) in Made(type))
        {
            switch (made)
            {
                case Refusal refusal:
                    yield return (name, refusal.Sentence);
                    break;
                case Sentence sentence:
                    yield return (name, sentence);
                    break;
                default:
                    break;
            }
        }
    }

    private static IEnumerable<(string Name, object? Made)> Made(Type type)
    {
        const BindingFlags Public = BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly;
        foreach (MethodInfo method in type.GetMethods(Public))
        {
            object?[] arguments = [.. method.GetParameters().Select(p => Example(method.Name, p))];
            yield return (method.Name, method.Invoke(null, arguments));
        }
    }

    /// <summary>A value that reads well in the sentence; by the parameter's name where its type says too little.</summary>
    private static object? Example(string method, ParameterInfo parameter)
    {
        string name = parameter.Name!;
        Type type = parameter.ParameterType;
        if (type == typeof(string))
        {
            return (method, name) switch
            {
                (_, "file") => "cmj-01.csv",
                (_, "path") => "recordings",
                (_, "key") => "body_mass_kg",
                ("IntervalMissing", _) => "flight_s",
                ("HeaderCase", "name") => "Force_n",
                ("ColumnIgnored", "name") => "sync",
                ("ParameterOutside", "name") => "POINT:RATE",
                (_, "column" or "name" or "missing") => method is "UnitConverted" ? "force_kN" : "force_N",
                (_, "taken") => "force_N",
                (_, "unit") => "V",
                (_, "task") => "drop-jump",
                (_, "parameter") => "ANALOG:SCALE",
                (_, "fault") => "OverflowException",
                ("UnknownTask", _) => "cartwheel",
                ("UnknownHeader", _) => "zeit,kraft",
                ("Frame", _) => "12.5",
                ("FrameEvent", _) => "jump",
                ("FrameAlternate", _) => "take-off",
                (_, "value") => "heavy",
                _ => "7OO",
            };
        }

        if (type == typeof(double))
        {
            return name switch
            {
                "percent" => 14.0,
                "beforeN" => 702.0,
                "afterN" => 741.0,
                "metres" => 0.03,
                "measuredM" => 0.27,
                "nominalM" => 0.30,
                "measuredKg" => 71.4,
                "statedKg" => 80.0,
                "seconds" => method is "TooShort" ? 0.62
                : method is "FirstContactLong" ? 3.1
                : 0.041,
                "fromS" => 1.204,
                "toS" => 1.231,
                "rateHz" => 120.0,
                "frameRateHz" or "analogRateHz" => 0.0,
                "newtonsPerSecond" => 3.2,
                "value" or "forceN" => 812_000.0,
                "header" => 36.0,
                "other" => 12.0,
                "frames" => 800.0,
                "from" => 900.0,
                "to" => 910.0,
                "type" => 5.0,
                "atS" or "timeS" => 1.204,
                "newtons" => method is "SignReversed" ? -702.0
                : method is "Unit" ? 0.71
                : 640.0,
                _ => 0.5,
            };
        }

        if (type == typeof(int) || type == typeof(long) || type == typeof(byte))
        {
            long number = name switch
            {
                "line" or "headerLine" => 12,
                "seen" => method is "ByteOrder" ? 200 : 2,
                "expected" => 3,
                "limit" => 2_000_000,
                "samples" => 2_400_000,
                "count" => 3,
                "counted" => 3,
                "frame" => 412,
                "at" => 5429,
                "plate" or "left" => 1,
                "right" => 2,
                "used" => 3,
                "channel" => 9,
                "channels" => 6,
                "length" => 100,
                "block" => 13,
                "from" => 1,
                "to" => 10,
                _ => 4,
            };
            return Convert.ChangeType(number, type, System.Globalization.CultureInfo.InvariantCulture);
        }

        if (type == typeof(int[]))
        {
            return method is "WhichPlates" ? new[] { 1, 2, 3 } : [2, 3];
        }

        if (type == typeof(ManifestRow))
        {
            return new ManifestRow(12, "cmj-01.csv", Jumpwright.Recordings.RecordingLabels.None, null);
        }

        if (type == typeof(Sentence))
        {
            return (method, name) switch
            {
                (_, "unit") => Sentence.Of($"newtons"),
                (_, "expected") => Sentence.Of($"a number from {15.0} to {300.0} {"kg"}"),
                ("FrameRateImplausible", _) => Sentence.Of($"a flight of {2.4:0.###} s would be a jump over 1.2 m"),
                ("IntervalImplausible", _) => Sentence.Of($"a flight of {480.0:0.###} s would be a jump over 1.2 m"),
                ("Contradiction", _) => Sentence.Of($"points"),
                (_, "after") => Sentence.Of($"touch-down"),
                _ => Sentence.Of($"take-off"),
            };
        }

        if (type == typeof(IEnumerable<Sentence>))
        {
            return new[] { Sentence.Of($"take-off"), Sentence.Of($"touch-down") };
        }

        if (type.IsEnum)
        {
            return Enum.GetValues(type).GetValue(0);
        }

        if (type == typeof(bool))
        {
            return true;
        }

        throw new InvalidOperationException(
            $"{method}: say in {nameof(RefusalsPage)} what to put for {type.Name} {name}."
        );
    }
}
