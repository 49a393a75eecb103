using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Safety.Symptoms;

/// <summary>A grade and the words for what was seen.</summary>
internal readonly record struct PainJudgement(PainGrade Grade, string Seen)
{
    /// <summary>A score from 0 to 10, or null where none was given or it is not one.</summary>
    public static double? Score(SymptomReport report) => report.Score is { } s && s >= 0 && s <= 10 ? s : null;

    /// <summary>How sentences name a report.</summary>
    public static string Name(SymptomReport report) =>
        string.Join(
            ' ',
            new[]
            {
                BodySite.Of(report.Site, report.Side) is { Name.Length: > 0 } site
                    ? site.ToString()
                    : "a site nobody named,",
                SymptomKinds.Read(report.Kind) ?? report.Kind,
                Score(report) is { } score ? FormattableString.Invariant($"{score:0.#} of 10") : "without a score",
                When(report.When),
                "on " + Day.Of(report.Date),
            }.Where(w => w.Length > 0)
        );

    private static string When(string? when) =>
        when?.Trim() switch
        {
            null => "",
            "during" => "during work",
            "after" => "after work",
            { } said => said,
        };

    /// <summary>The worst report; one without a score is worse than any.</summary>
    public static SymptomReport Worst(IEnumerable<SymptomReport> reports) =>
        reports.OrderByDescending(r => Score(r) ?? double.PositiveInfinity).ThenByDescending(r => r.Date).First();
}
