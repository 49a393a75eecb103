using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Safety.Symptoms;

/// <summary>A grade and the words for what was seen.</summary>
internal readonly record struct PainJudgement(PainGrade Grade, Sentence Seen)
{
    /// <summary>A score from 0 to 10, or null where none was given or it is not one.</summary>
    public static double? Score(SymptomReport report) => report.Score is { } s && s >= 0 && s <= 10 ? s : null;

    /// <summary>How sentences name a report.</summary>
    public static Sentence Name(SymptomReport report)
    {
        Sentence site = BodySite.Of(report.Site, report.Side) is { Name.Length: > 0 } named
            ? named.Said
            : Sentence.Of($"a site nobody named,");
        Sentence score = Score(report) is { } s ? Sentence.Of($"{s:0.#} of 10") : Sentence.Of($"without a score");
        Sentence kind = SymptomKinds.Said(report.Kind);
        return When(report.When) is { } when
            ? Sentence.Of($"{site} {kind} {score} {when} on {report.Date}")
            : Sentence.Of($"{site} {kind} {score} on {report.Date}");
    }

    private static Sentence? When(string? when) =>
        when?.Trim() switch
        {
            null or "" => null,
            "during" => $"during work",
            "after" => $"after work",
            "next-morning" => $"next-morning",
            "rest" => $"rest",
            "night" => $"night",
            { } said => $"{said}",
        };

    /// <summary>The worst report; one without a score is worse than any.</summary>
    public static SymptomReport Worst(IEnumerable<SymptomReport> reports) =>
        reports.OrderByDescending(r => Score(r) ?? double.PositiveInfinity).ThenByDescending(r => r.Date).First();
}
