using System.Globalization;
using Jumpwright.Recordings;

namespace Jumpwright.Simulation.Writing;

/// <summary>The lines <c># key: value</c> before the header.</summary>
internal static class Metadata
{
    public static void Write(ByteLines lines, RecordingLabels? labels)
    {
        if (labels is null)
        {
            return;
        }

        Line(lines, "athlete", labels.Athlete);
        Line(lines, "date", labels.Date?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture));
        Line(lines, "task", labels.Task?.Id());
        Line(lines, "body_mass_kg", labels.BodyMassKg);
        Line(lines, "external_load_kg", labels.ExternalLoadKg);
        Line(lines, "drop_height_m", labels.DropHeightM);
        Line(
            lines,
            "limb",
            labels.Limb switch
            {
                Limb.Both => "both",
                Limb.Left => "left",
                Limb.Right => "right",
                _ => null,
            }
        );
        Line(lines, "note", labels.Note);
    }

    public static void Line(ByteLines lines, string key, double? value) =>
        Line(lines, key, value?.ToString("0.####", CultureInfo.InvariantCulture));

    public static void Line(ByteLines lines, string key, string? value)
    {
        if (value is not null)
        {
            lines.Text("# " + key + ": " + value + "\n");
        }
    }
}
