using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>The samples of a force recording: <c>time_s</c> with one force column or two.</summary>
internal static class ForceTable
{
    /// <summary>16 minutes at 2000 Hz; a recording of jumps is seconds long.</summary>
    internal const int MostSamples = 2_000_000;

    internal const int FewestSamples = 20;

    /// <summary>No landing of a person on one plate reaches 50 kN; sensors and slips of the unit do.</summary>
    internal const double MostForceN = 50_000;

    internal const double MostTimeS = 1e7;

    /// <summary>Reads the samples after the header: by the fast road where the table is of the plain form, else by this one.</summary>
    public static Outcome<Recording> Read(
        ref TextLines lines,
        Header header,
        RecordingLabels labels,
        List<string> warnings,
        bool mayBePlain,
        out bool again
    )
    {
        again = false;
        if (mayBePlain && !lines.CarriageReturns && PlainForceTable.Knows(header.Columns))
        {
            TextLines ahead = lines;
            if (PlainForceTable.TryRead(ref ahead, header, labels, warnings, out Outcome<Recording> plain))
            {
                return plain;
            }

            if (ahead.Moved)
            {
                again = true;
                return default;
            }
        }

        return ReadAnyForm(ref lines, header, labels, warnings);
    }

    /// <summary>Reads whatever can be read, repairs, and says what is wrong and where.</summary>
    internal static Outcome<Recording> ReadAnyForm(
        ref TextLines lines,
        Header header,
        RecordingLabels labels,
        List<string> warnings
    )
    {
        Column[] columns = header.Columns;
        int time = header.IndexOf(ColumnRole.Time);
        int left = header.IndexOf(ColumnRole.LeftForce);
        bool two = left >= 0;
        int first = two ? left : header.IndexOf(ColumnRole.Force);
        int second = header.IndexOf(ColumnRole.RightForce);
        double timeFactor = columns[time].Factor;

        int guess = (int)Math.Min((lines.Bytes / (columns.Length * 7)) + 16, MostSamples);
        var times = new SampleBuffer(guess);
        var firsts = new SampleBuffer(guess);
        var seconds = two ? new SampleBuffer(guess) : default;
        Span<double> values = stackalloc double[Math.Min(columns.Length, 64)];
        if (columns.Length > 64)
        {
            return Refusals.TooManyFields(header.Line, columns.Length, 64);
        }

        Span<int> timeDecimals = stackalloc int[SamplingRate.Magnitudes];
        timeDecimals.Clear();
        List<int>? skippedBefore = null;
        bool quotes = false;
        int lastDecimals = 0;
        int fewestLastDecimals = int.MaxValue;
        while (lines.Next())
        {
            ReadOnlySpan<byte> line = lines.Current;
            bool blank = line.IsEmpty || IsBlank(line);
            if (blank || line[0] == (byte)'#')
            {
                if (blank && lines.AtEnd)
                {
                    break;
                }

                (skippedBefore ??= []).Add(times.Count);
                AddOnce(warnings, blank ? Repairs.BlankLinesSkipped : Repairs.CommentsSkipped);
                continue;
            }

            if (line.Contains((byte)'"'))
            {
                quotes = true;
                line = Fields.Unquoted(line);
            }

            bool lastLineOpen = !lines.Ended;
            if (
                ReadRow(line, lines.Number, columns, values, time, lastLineOpen, out int decimals, out lastDecimals) is
                { } refusal
            )
            {
                return refusal;
            }

            if (
                lastLineOpen
                && times.Count > 0
                && lastDecimals < fewestLastDecimals
                && fewestLastDecimals < int.MaxValue
            )
            {
                return Refusals.CutOff(lines.Number);
            }

            fewestLastDecimals = Math.Min(fewestLastDecimals, lastDecimals);
            double t = values[time];
            int magnitude = SamplingRate.Magnitude(t);
            timeDecimals[magnitude] = Math.Max(timeDecimals[magnitude], decimals);
            t *= timeFactor;
            double f = values[first] * columns[first].Factor;
            if (!(Math.Abs(t) <= MostTimeS))
            {
                return Refusals.BeyondReason(lines.Number, columns[time].Name, values[time]);
            }

            if (!(Math.Abs(f) <= MostForceN))
            {
                return Refusals.BeyondReason(lines.Number, columns[first].Name, values[first]);
            }

            times.Add(t);
            firsts.Add(f);
            if (two)
            {
                double r = values[second] * columns[second].Factor;
                if (!(Math.Abs(r) <= MostForceN))
                {
                    return Refusals.BeyondReason(lines.Number, columns[second].Name, values[second]);
                }

                seconds.Add(r);
            }

            if (times.Count > MostSamples)
            {
                return Refusals.TooManySamples(lines.Number, MostSamples);
            }
        }

        if (lines.Fault is { } fault)
        {
            return fault;
        }

        if (times.Count == 0)
        {
            return Refusals.NoData(header.Line);
        }

        if (times.Count < FewestSamples)
        {
            return Refusals.TooFewSamples(times.Count);
        }

        int headerLine = header.Line;
        Outcome<SamplingRate> fit = SamplingRate.Fit(
            times.Span,
            timeDecimals,
            timeFactor,
            i => headerLine + 1 + i + (skippedBefore?.Count(s => s <= i) ?? 0)
        );
        if (!fit.TryGet(out SamplingRate rate, out Refusal? uneven))
        {
            return uneven;
        }

        if (lines.CarriageReturns)
        {
            warnings.Add(Repairs.CarriageReturns);
        }

        if (quotes)
        {
            warnings.Add(Repairs.QuotesTakenOff);
        }

        ReadOnlyMemory<double> total = two ? Sum(firsts.Span, seconds.Span) : firsts.Memory;
        return new ForceRecording(
            labels,
            [.. warnings],
            rate.StartS,
            rate.RateHz,
            total,
            two ? firsts.Memory : default,
            two ? seconds.Memory : default
        );
    }

    private static Refusal? ReadRow(
        ReadOnlySpan<byte> line,
        int number,
        Column[] columns,
        Span<double> values,
        int time,
        bool open,
        out int timeDecimals,
        out int lastDecimals
    )
    {
        timeDecimals = 0;
        lastDecimals = 0;
        ReadOnlySpan<byte> rest = line;
        for (int c = 0; c < columns.Length; c++)
        {
            if (c > 0)
            {
                if (rest.IsEmpty)
                {
                    return open ? Refusals.CutOff(number) : Refusals.TooFewFields(number, c, columns.Length);
                }

                rest = rest[1..];
            }

            Column column = columns[c];
            if (column.Role == ColumnRole.Ignored)
            {
                int comma = rest.IndexOf((byte)',');
                rest = comma < 0 ? default : rest[comma..];
                lastDecimals = 0;
                continue;
            }

            if (rest.Length > 0 && rest[0] == (byte)' ')
            {
                rest = rest.TrimStart((byte)' ');
            }

            if (!Number.TryRead(rest, out double value, out int length, out int decimals))
            {
                return NoNumber(rest, number, column, open && rest.IndexOf((byte)',') < 0);
            }

            rest = rest[length..];
            if (rest.Length > 0 && rest[0] != (byte)',')
            {
                ReadOnlySpan<byte> after = rest.TrimStart(" \t"u8);
                if (after.Length > 0 && after[0] != (byte)',')
                {
                    return NotANumber(line, number, column, c);
                }

                rest = after;
            }

            if (!double.IsFinite(value))
            {
                return NotANumber(line, number, column, c);
            }

            values[c] = value;
            lastDecimals = decimals;
            if (c == time)
            {
                timeDecimals = decimals;
            }
        }

        return rest.IsEmpty
            ? null
            : Refusals.TooManyFields(number, columns.Length + rest.Count((byte)','), columns.Length);
    }

    private static Refusal NoNumber(ReadOnlySpan<byte> rest, int number, Column column, bool cut)
    {
        int comma = rest.IndexOf((byte)',');
        ReadOnlySpan<byte> field = (comma < 0 ? rest : rest[..comma]).Trim(" \t"u8);
        if (cut && (field.IsEmpty || field.SequenceEqual("-"u8)))
        {
            return Refusals.CutOff(number);
        }

        if (field.ContainsAnyInRange((byte)0, (byte)8))
        {
            return Refusals.NotText(number);
        }

        return field.IsEmpty
            ? Refusals.MissingValue(number, Fields.Shown(column.Name))
            : Refusals.NotANumber(number, Fields.Shown(column.Name), Fields.Shown(field));
    }

    private static Refusal NotANumber(ReadOnlySpan<byte> line, int number, Column column, int index)
    {
        for (int i = 0; i < index; i++)
        {
            line = line[(line.IndexOf((byte)',') + 1)..];
        }

        int comma = line.IndexOf((byte)',');
        line = comma < 0 ? line : line[..comma];
        if (line.Contains((byte)';'))
        {
            return Refusals.SemicolonsOrTabs(number);
        }

        return line.ContainsAnyInRange((byte)0, (byte)8)
            ? Refusals.NotText(number)
            : Refusals.NotANumber(number, Fields.Shown(column.Name), Fields.Shown(line));
    }

    private static double[] Sum(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = new double[a.Length];
        for (int i = 0; i < sum.Length; i++)
        {
            sum[i] = a[i] + b[i];
        }

        return sum;
    }

    private static bool IsBlank(ReadOnlySpan<byte> line) => line.IndexOfAnyExcept(" \t"u8) < 0;

    private static void AddOnce(List<string> warnings, string sentence)
    {
        if (!warnings.Contains(sentence))
        {
            warnings.Add(sentence);
        }
    }
}
