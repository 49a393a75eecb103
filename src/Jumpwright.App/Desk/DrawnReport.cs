using System.Collections.Concurrent;
using Jumpwright.App.Wording;
using Jumpwright.Paper;
using Jumpwright.Prescribing.Reports;

namespace Jumpwright.App.Desk;

/// <summary>An athlete's report with its pictures, each drawn once in a language.</summary>
/// <param name="facts">What stands behind it.</param>
/// <param name="report">What it says.</param>
public sealed class DrawnReport(Prescription facts, Report report)
{
    private readonly ConcurrentDictionary<(string Plot, string Language), Once<string>> _drawn = new();

    /// <summary>What stands behind it.</summary>
    public Prescription Facts { get; } = facts;

    /// <summary>What it says.</summary>
    public Report Report { get; } = report;

    /// <summary>One of its pictures as SVG, in the language of the request.</summary>
    public string Svg(ReportPlot plot)
    {
        ArgumentNullException.ThrowIfNull(plot);
        Speech speech = Speech.Now;
        return _drawn
            .GetOrAdd(
                (plot.Name, speech.Language),
                _ => new(() => ReportPdf.Svg(plot.Written(SpokenSentences.Text), speech.Language))
            )
            .Value;
    }
}
