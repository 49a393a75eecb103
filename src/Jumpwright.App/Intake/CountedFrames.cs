using System.Globalization;
using System.Text;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Recordings;
using NodaTime.Text;

namespace Jumpwright.App.Intake;

/// <summary>
/// Frames that somebody counted while stepping through a film, typed in a page and written as a recording of frames like any other, so
/// that it is kept, measured and taken back as those are.
/// </summary>
/// <param name="Name">Of the file.</param>
/// <param name="Text">What stands in it.</param>
internal sealed record CountedFrames(string Name, string Text)
{
    public const string First = "first";
    public const string Frames = "frames";
    public const string TakeOff = "take-off";
    public const string TouchDown = "touch-down";

    /// <summary>Jumps that flights and contacts alone can measure.</summary>
    public static readonly string[] Tasks =
    [
        "countermovement-jump",
        "squat-jump",
        "drop-jump",
        "repeated-hops",
        "approach-jump",
    ];

    private const int Most = 200;

    /// <summary>The recording, or the first field that can't stand so and the key of the sentence why.</summary>
    public static (CountedFrames? Read, string Field, string Why) Of(IFormCollection form, Workbook book)
    {
        static (CountedFrames?, string, string) No(string field, string why) => (null, field, why);
        string athlete = form["athlete"].ToString();
        string task = form["task"].ToString();
        string first = form[First].ToString();
        if (book.Find(athlete) is null)
        {
            return No("film-athlete", "import.film.athlete.wrong");
        }

        if (LocalDatePattern.Iso.Parse(form["date"].ToString()) is not { Success: true, Value: var day })
        {
            return No("film-date", "import.film.date.wrong");
        }

        if (day > book.Day)
        {
            return No("film-date", "import.day.wrong");
        }

        if (!Tasks.Contains(task, StringComparer.Ordinal))
        {
            return No("film-task", "import.film.task.wrong");
        }

        if (Rate(form[Incoming.FrameRate].ToString()) is not { } rate)
        {
            return No("film-rate", "import.rate.wrong");
        }

        if (first is not (TakeOff or TouchDown) || Read(form[Frames].ToString()) is not { } frames)
        {
            return No("film-frames", "import.film.frames.wrong");
        }

        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"# athlete: {athlete}\n# date: {LocalDatePattern.Iso.Format(day)}\n"
        );
        text.Append(CultureInfo.InvariantCulture, $"# task: {task}\n# {Incoming.FrameRate}: {rate:R}\n");
        text.Append("frame,event\n");
        for (int i = 0; i < frames.Length; i++)
        {
            string what = i % 2 == 0 == (first == TakeOff) ? TakeOff : TouchDown;
            text.Append(CultureInfo.InvariantCulture, $"{frames[i]},{what}\n");
        }

        return (new($"film-{athlete}-{LocalDatePattern.Iso.Format(day)}-{task}.csv", text.ToString()), "", "");
    }

    /// <summary>A capture rate, frames a second, with a decimal point or comma; null where none can be read or no camera has it.</summary>
    public static double? Rate(string typed) =>
        double.TryParse(
            typed.Trim().Replace(',', '.'),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out double rate
        ) && rate is >= RecordingLabels.LeastFramesPerSecond and <= RecordingLabels.MostFramesPerSecond
            ? rate
            : null;

    /// <summary>Numbers of frames, each later than the last; null where they are not.</summary>
    private static int[]? Read(string typed)
    {
        string[] words = typed.Split([' ', ',', ';', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries);
        int[] frames =
        [
            .. words.Select(w => int.TryParse(w, NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : -1),
        ];
        return
            frames.Length is >= 2 and <= Most
            && frames[0] >= 0
            && frames.Zip(frames.Skip(1)).All(pair => pair.First < pair.Second)
            ? frames
            : null;
    }
}
