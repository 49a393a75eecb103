using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Safety.Symptoms;

/// <summary>A report that asks for a clinician before any jump.</summary>
/// <param name="Report">The report.</param>
/// <param name="What">What was seen or felt.</param>
internal sealed record StopSign(SymptomReport Report, Sentence What)
{
    public BodySite Site => BodySite.Of(Report.Site, Report.Side);

    /// <summary>The sign in a report, or null. A kind nobody knows is taken for one.</summary>
    public static StopSign? In(SymptomReport report)
    {
        string? kind = SymptomKinds.Read(report.Kind);
        bool denied = report.Score is 0;
        Sentence? what = kind switch
        {
            null => Sentence.Of($"a report of a kind that cannot be understood (\"{report.Kind.Trim()}\")"),
            SymptomKinds.Swelling when !denied => $"swelling",
            SymptomKinds.GivingWay when !denied => $"giving way",
            SymptomKinds.Locking when !denied => $"locking",
            SymptomKinds.Numbness when !denied => $"numbness",
            SymptomKinds.Pain
            or SymptomKinds.Stiffness
            or SymptomKinds.Other when IsRestOrNight(report.When) && !denied => $"pain at rest or at night",
            _ => null,
        };
        what ??= StopSignWords.Find(report.Note) ?? (denied ? null : StopSignWords.Find(report.Site));
        return what is null ? null : new(report, what);
    }

    private static bool IsRestOrNight(string? when) => when?.Trim().ToLowerInvariant() is "rest" or "night";
}
