using System.Globalization;
using Jumpwright.Recordings;
using NodaTime.Text;

namespace Jumpwright.Simulation.Demo;

/// <summary>One line of simulated-trials.csv: a recording to be made for the demo squad.</summary>
internal sealed class DemoRow
{
    private readonly Dictionary<string, string> _cells;

    private DemoRow(Dictionary<string, string> cells) => _cells = cells;

    public string File => Text("file");

    public string Device => Text("device");

    public string Defect => Text("defect");

    public JumpTask Task => JumpTasks.Parse(Text("task")) ?? throw new FormatException($"{File}: unknown task.");

    public ulong Seed => ulong.Parse(Text("seed"), CultureInfo.InvariantCulture);

    public RecordingLabels Labels =>
        new(
            Text("athlete"),
            LocalDatePattern.Iso.Parse(Text("date")).Value,
            Task,
            Optional("body_mass_kg"),
            Optional("external_load_kg"),
            Optional("box_m"),
            Limb.Both
        );

    public static IEnumerable<DemoRow> Read(string csv)
    {
        string[] lines = csv.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        string[] names = lines[0].Split(',');
        foreach (string line in lines.Skip(1).Where(l => !l.StartsWith('#')))
        {
            string[] cells = line.Split(',');
            if (cells.Length != names.Length)
            {
                throw new FormatException($"'{line}' has {cells.Length} cells, the header {names.Length}.");
            }

            yield return new DemoRow(
                names.Zip(cells).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal)
            );
        }
    }

    public string Text(string name) => _cells.GetValueOrDefault(name, "");

    public double? Optional(string name) =>
        Text(name) is { Length: > 0 } text ? double.Parse(text, CultureInfo.InvariantCulture) : null;

    public double Number(string name, double otherwise) => Optional(name) ?? otherwise;
}
