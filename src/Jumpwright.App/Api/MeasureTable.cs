using System.Globalization;
using System.Text;
using Jumpwright.App.Desk;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using NodaTime.Text;

namespace Jumpwright.App.Api;

/// <summary>Every measure of every trial as rows: the one shape of all exports.</summary>
internal static class MeasureTable
{
    /// <summary>One measure of one trial.</summary>
    internal sealed record Row(
        string Athlete,
        string Date,
        string Task,
        string File,
        int Trial,
        string Device,
        string Measure,
        double Value,
        string Unit,
        double StandardUncertainty,
        string Method,
        bool Doubtful
    );

    public static IEnumerable<Row> Rows(Workbook book) => book.Leaves.SelectMany(l => l.History.Trials).SelectMany(Of);

    public static IEnumerable<Row> Of(MeasuredTrial t) =>
        t.Trial.Measures.Select(m => new Row(
            t.AthleteId,
            LocalDatePattern.Iso.Format(t.Date),
            t.Trial.Task.Id(),
            t.File,
            t.Trial.Number,
            t.Device.ToString(),
            m.Name,
            m.Value,
            m.Unit.Symbol,
            m.StandardUncertainty,
            m.Method,
            t.Trial.Doubtful.Contains(m.Name)
        ));

    /// <summary>RFC 4180, SI units, decimal point.</summary>
    public static void Csv(Workbook book, TextWriter to)
    {
        to.Write("athlete,date,task,file,trial,device,measure,value,unit,standard_uncertainty,method,doubtful\r\n");
        foreach (Row r in Rows(book))
        {
            to.Write(
                string.Join(
                    ',',
                    Cell(r.Athlete),
                    r.Date,
                    r.Task,
                    Cell(r.File),
                    r.Trial.ToString(CultureInfo.InvariantCulture),
                    r.Device,
                    r.Measure,
                    r.Value.ToString("R", CultureInfo.InvariantCulture),
                    r.Unit,
                    r.StandardUncertainty.ToString("R", CultureInfo.InvariantCulture),
                    Cell(r.Method),
                    r.Doubtful ? "yes" : "no"
                )
            );
            to.Write("\r\n");
        }
    }

    /// <summary>
    /// A cell of text. One that a spreadsheet would take for a formula gets an apostrophe before it, so that opening an export
    /// runs nothing.
    /// </summary>
    public static string Cell(string text)
    {
        string safe = text is ['=' or '+' or '-' or '@' or '\t' or '\r', ..] ? "'" + text : text;
        return safe.AsSpan().ContainsAny(",\"\r\n")
            ? new StringBuilder(safe).Replace("\"", "\"\"").Insert(0, '"').Append('"').ToString()
            : safe;
    }
}
