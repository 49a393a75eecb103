using System.Globalization;
using System.Text;
using Jumpwright.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Recordings;

/// <summary>The metadata lines <c># key: value</c> above the header. Keys that nobody defined are free text and left alone.</summary>
internal sealed class FileLabels
{
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    public RecordingLabels Labels { get; private set; } = RecordingLabels.None;

    /// <summary>Takes one line that begins with <c>#</c>; gives a refusal where its value would change a measure.</summary>
    public Refusal? Take(ReadOnlySpan<byte> line, int number, RecordingLabels manifest, List<string> warnings)
    {
        string text = Encoding.UTF8.GetString(line).TrimStart().TrimStart('#');
        int colon = text.IndexOf(':');
        if (colon < 0)
        {
            return null;
        }

        string key = text[..colon].Trim();
        string value = text[(colon + 1)..].Trim();
        if (value.Length == 0)
        {
            return null;
        }

        switch (key)
        {
            case "athlete":
                Labels = Labels with { Athlete = value };
                break;
            case "note":
                Labels = Labels with { Note = Labels.Note is null ? value : Labels.Note + " " + value };
                return null;
            case "date":
                ParseResult<LocalDate> date = LocalDatePattern.Iso.Parse(value);
                if (!date.Success)
                {
                    warnings.Add(Repairs.LabelIgnored(number, key, value, $"a day such as 2027-01-04"));
                    return null;
                }

                Labels = Labels with { Date = date.Value };
                break;
            case "task":
                JumpTask? task = JumpTasks.Parse(value);
                if (task is null)
                {
                    if (manifest.Task is null)
                    {
                        return Refusals.UnknownTask(number, Fields.Shown(value));
                    }

                    warnings.Add(Repairs.LabelIgnored(number, key, value, $"a known task"));
                    return null;
                }

                Labels = Labels with { Task = task };
                break;
            case "body_mass_kg":
                Labels = Labels with { BodyMassKg = Within(number, key, value, 15, 300, "kg", warnings) };
                break;
            case "external_load_kg":
                if (Parse(value) is not (>= 0 and <= 400))
                {
                    if (manifest.ExternalLoadKg is null)
                    {
                        return Refusals.ExternalLoad(number, Fields.Shown(value));
                    }

                    warnings.Add(Repairs.LabelIgnored(number, key, value, $"a load from {0.0} to {400.0} kg"));
                    return null;
                }

                Labels = Labels with { ExternalLoadKg = Parse(value) };
                break;
            case "drop_height_m":
                Labels = Labels with { DropHeightM = Within(number, key, value, 0, 3, "m", warnings) };
                break;
            case "limb":
                if (
                    !Enum.TryParse(value, ignoreCase: true, out Limb limb)
                    || !Enum.IsDefined(limb)
                    || char.IsDigit(value[0])
                )
                {
                    warnings.Add(Repairs.LabelIgnored(number, key, value, $"both, left or right"));
                    return null;
                }

                Labels = Labels with { Limb = limb };
                break;
            case "frames_per_second":
                if (
                    Parse(value)
                    is not (>= RecordingLabels.LeastFramesPerSecond and <= RecordingLabels.MostFramesPerSecond)
                )
                {
                    if (manifest.FramesPerSecond is null)
                    {
                        return Refusals.FramesPerSecond(number, Fields.Shown(value));
                    }

                    warnings.Add(Repairs.LabelIgnored(number, key, value, $"a rate from 20 to 5000"));
                    return null;
                }

                Labels = Labels with { FramesPerSecond = Parse(value) };
                break;
            default:
                return null;
        }

        if (!_seen.Add(key))
        {
            warnings.Add(Repairs.LabelRepeated(number, key));
        }

        return null;
    }

    private static double? Parse(string value) =>
        double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
        && double.IsFinite(number)
            ? number
            : null;

    private static double? Within(
        int line,
        string key,
        string value,
        double least,
        double most,
        string unit,
        List<string> warnings
    )
    {
        double? number = Parse(value);
        if (number >= least && number <= most)
        {
            return number;
        }

        warnings.Add(Repairs.LabelIgnored(line, key, value, $"a number from {least} to {most} {unit}"));
        return null;
    }
}
