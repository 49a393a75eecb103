using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Symptoms;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Pain of a bone, or of a place where it may be one. Pain during or after load is not acceptable in bone, so a later 0 does not open
/// it at once: the fortnight after the last painful report must pass too. Bone is never judged by the tendon's rule.
/// </summary>
internal sealed class BonePain : SafetyRule
{
    public override string Id => "bone-pain";

    public override string Says =>
        "Any pain that may be of a bone closes all impact; it opens when a later report says 0 and a fortnight has passed, or when a "
        + "licensed person names another tissue.";

    public override Source Source => SafetySources.CommonPractice;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        foreach (PainEpisode episode in @case.Episodes)
        {
            if (!episode.TissuesUnder(PainRuleKind.Bone).Any())
            {
                continue;
            }

            SymptomReport last = episode.Counting.Union(episode.Recent).MaxBy(r => r.Date)!;
            Sentence seen = $"Pain that may be of a bone ({PainJudgement.Name(last)})";
            Sentence change =
                $"ask a physiotherapist or physician. It opens when a report of 0 stands and {@case.Limits.Whole(PainEpisodes.Window)} days have passed without pain there, or when a licensed person names another tissue.";
            yield return Close(new TierAtMost(Tissue.Bone, 0), $"{seen}: no impact; {change}");
            yield return Close(new NoHighIntensity(), $"{seen}: no high-intensity work; {change}");
        }
    }
}
