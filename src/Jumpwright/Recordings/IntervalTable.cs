using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>The rows of a contact mat or light gate: <c>contact_s,flight_s</c>.</summary>
internal static class IntervalTable
{
    /// <summary>A flight this long is a height of 1.2 m: beyond any person, so the unit is wrong.</summary>
    public static readonly double LongestFlightS = Math.Sqrt(8 * 1.2 / Gravity.MetresPerSecondSquared);

    public const double LongestContactS = 2;
    private const double ShortestS = 0.02;

    /// <summary>No mat is believed to resolve better than a millisecond, whatever it prints.</summary>
    private const double FinestResolutionS = 0.001;

    private const int MostRows = 10_000;

    public static Outcome<Recording> Read(
        ref TextLines lines,
        Header header,
        RecordingLabels labels,
        List<string> warnings
    )
    {
        int contact = header.IndexOf(ColumnRole.Contact);
        int flight = header.IndexOf(ColumnRole.Flight);
        var rows = new List<(ContactFlight Row, int Line)>();
        int decimals = 0;
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

            if (
                Value(fields[contact], header.Columns[contact], lines.Number, ref decimals, out double? contactS) is
                { } bad
            )
            {
                return bad;
            }

            if (
                Value(fields[flight], header.Columns[flight], lines.Number, ref decimals, out double? flightS) is
                { } worse
            )
            {
                return worse;
            }

            rows.Add((new ContactFlight(contactS, flightS), lines.Number));
            if (rows.Count > MostRows)
            {
                return Refusals.TooManySamples(lines.Number, MostRows);
            }
        }

        if (lines.Fault is { } fault)
        {
            return fault;
        }

        if (rows.Count == 0)
        {
            return Refusals.NoData(header.Line);
        }

        for (int i = 0; i < rows.Count; i++)
        {
            (ContactFlight row, int line) = rows[i];
            if (row.ContactS is null && i > 0)
            {
                return Refusals.IntervalMissing(line, "contact_s");
            }

            if (row.FlightS is null && i < rows.Count - 1)
            {
                return Refusals.IntervalMissing(line, "flight_s");
            }

            if (row.FlightS > LongestFlightS)
            {
                return Refusals.IntervalImplausible(
                    line,
                    $"a flight of {row.FlightS:0.###} s would be a jump over 1.2 m"
                );
            }

            if (row.ContactS > LongestContactS)
            {
                if (i > 0 || row.ContactS > 60)
                {
                    return Refusals.IntervalImplausible(
                        line,
                        $"a contact of {row.ContactS:0.###} s is longer than 2 s"
                    );
                }

                warnings.Add(Repairs.FirstContactLong(row.ContactS.Value));
                rows[0] = (row with { ContactS = null }, line);
            }
        }

        if (lines.CarriageReturns)
        {
            warnings.Add(Repairs.CarriageReturns);
        }

        double unit = header.Columns[flight].Factor;
        double resolution = Math.Max(Math.Pow(10, -decimals) * unit, FinestResolutionS);
        return new IntervalRecording(
            labels,
            [.. warnings],
            [.. rows.Select(r => r.Row)],
            resolution / Math.Sqrt(6),
            null,
            0
        );
    }

    private static Refusal? Value(string field, Column column, int line, ref int decimals, out double? value)
    {
        value = null;
        if (field.Length == 0)
        {
            return null;
        }

        Span<byte> text = stackalloc byte[64];
        if (
            !System.Text.Encoding.UTF8.TryGetBytes(field, text, out int length)
            || !Number.TryRead(text[..length], out double number, out int read, out int places)
            || read != length
            || !double.IsFinite(number)
        )
        {
            return Refusals.NotANumber(line, column.Name, Fields.Shown(field));
        }

        decimals = Math.Max(decimals, places);
        value = number * column.Factor;
        return value >= ShortestS
            ? null
            : Refusals.IntervalImplausible(
                line,
                $"{column.Name} of {number:0.####} is not a time of contact or flight"
            );
    }
}
