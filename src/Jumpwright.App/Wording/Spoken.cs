using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>
/// The core's enumerations in the language of the request, for pages that are translated; <see cref="Words"/> has the trade's English,
/// which English sentences take.
/// </summary>
internal static class Spoken
{
    public static string Of(Stage stage) => T[$"stage.{stage}"];

    public static string Of(Tissue tissue) => T[$"tissue.{tissue}"];

    public static string Of(PlanStatus status) => T[$"plan.status.{status}"];

    public static string Of(Quality quality) => T[$"quality.{quality}"];

    public static string Of(RungState state) => T[$"rung.{state}"];

    public static string Of(CriterionVerdict verdict) => T[$"criterion.{verdict}"];

    /// <summary>What is known of a quality, no surer than it is.</summary>
    public static string Of(Finding finding) =>
        finding switch
        {
            { Verdict: FindingVerdict.Limits, Probability: >= LikelyWords.AlmostCertain } => T[
                "finding.Limits.almost-certain"
            ],
            { Verdict: FindingVerdict.Limits, Probability: >= LikelyWords.VeryLikely } => T[
                "finding.Limits.very-likely"
            ],
            { Verdict: FindingVerdict.Sound, Probability: <= 1 - LikelyWords.VeryLikely } => T[
                "finding.Sound.very-likely"
            ],
            _ => T[$"finding.{finding.Verdict}"],
        };

    public static string Of(Side side) => T[$"side.{side}"];

    public static string Of(JumpTask task) => T[$"task.{task}"];

    /// <summary>How it is written within a sentence: German nouns keep their capital.</summary>
    public static string Within(string said) => Speech.Now.Language == "de" ? said : said.ToLowerInvariant();

    /// <summary>A probability, never as certain.</summary>
    public static string Probability(double p) =>
        p < Quantities.Probability.Least ? T["probability.below", Two(Quantities.Probability.Least)]
        : p > 1 - Quantities.Probability.Least ? T["probability.above", Two(1 - Quantities.Probability.Least)]
        : Two(p);

    /// <summary>A measure or a test by hand.</summary>
    public static string Measure(string contractName) =>
        Find($"measure.{contractName}") ?? MeasureWords.Name(contractName);

    /// <summary>An event of a trial.</summary>
    public static string Event(string contractName) => Find($"event.{contractName}") ?? EventNames.Said(contractName);

    public static string Of(Device device) => Find($"device.{device}") ?? Words.Of(device);

    /// <summary>A probability or share to two decimals.</summary>
    public static string Two(double p) => Numerals.Write(p, "0.00", Speech.Now.Language);
}
