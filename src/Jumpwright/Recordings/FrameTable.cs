using System.Globalization;
using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>Events that were read off the pictures of a camera: <c>frame,event</c>.</summary>
internal static class FrameTable
{
    private const string TouchDown = "touch-down";
    private const string TakeOff = "take-off";
    private const int MostRows = 10_000;

    public static Outcome<Recording> Read(
        ref TextLines lines,
        Header header,
        RecordingLabels labels,
        List<string> warnings
    )
    {
        if (labels.FramesPerSecond is not { } rate)
        {
            return Refusals.NoFramesPerSecond();
        }

        int frame = header.IndexOf(ColumnRole.Frame);
        int what = header.IndexOf(ColumnRole.Event);
        var events = new List<(long Frame, bool Down, int Line)>();
        while (lines.Next())
        {
            if (ShortRow.Of(ref lines, header, out List<string> fields) is { } broken)
            {
                return broken;
            }

            if (fields.Count == 0)
            {
                continue;
            }

            if (!long.TryParse(fields[frame], NumberStyles.None, CultureInfo.InvariantCulture, out long number))
            {
                return Refusals.Frame(lines.Number, Fields.Shown(fields[frame]));
            }

            if (fields[what] is not (TouchDown or TakeOff))
            {
                return Refusals.FrameEvent(lines.Number, Fields.Shown(fields[what]));
            }

            bool down = fields[what] == TouchDown;
            if (events.Count > 0)
            {
                if (number <= events[^1].Frame)
                {
                    return Refusals.FrameOrder(lines.Number, number);
                }

                if (down == events[^1].Down)
                {
                    return Refusals.FrameAlternate(lines.Number, fields[what]);
                }
            }

            events.Add((number, down, lines.Number));
            if (events.Count > MostRows)
            {
                return Refusals.TooManySamples(lines.Number, MostRows);
            }
        }

        if (lines.Fault is { } fault)
        {
            return fault;
        }

        if (events.Count == 0)
        {
            return Refusals.NoData(header.Line);
        }

        if (events.Count < 2)
        {
            return Refusals.FewEvents();
        }

        var rows = new List<ContactFlight>();
        double? contact = null;
        for (int i = 1; i < events.Count; i++)
        {
            double seconds = (events[i].Frame - events[i - 1].Frame) / rate;
            if (events[i].Down)
            {
                if (seconds > IntervalTable.LongestFlightS)
                {
                    return Refusals.FrameRateImplausible(
                        events[i].Line,
                        $"a flight of {seconds:0.###} s would be a jump over 1.2 m"
                    );
                }

                rows.Add(new ContactFlight(contact, seconds));
                contact = null;
            }
            else
            {
                if (seconds > IntervalTable.LongestContactS)
                {
                    return Refusals.FrameRateImplausible(
                        events[i].Line,
                        $"a contact of {seconds:0.###} s is longer than 2 s"
                    );
                }

                contact = seconds;
            }
        }

        if (contact is not null)
        {
            rows.Add(new ContactFlight(contact, null));
        }

        if (lines.CarriageReturns)
        {
            warnings.Add(Repairs.CarriageReturns);
        }

        return new IntervalRecording(
            labels,
            [.. warnings],
            [.. rows],
            1 / (Math.Sqrt(6) * rate),
            rate,
            events[0].Frame / rate
        );
    }
}
