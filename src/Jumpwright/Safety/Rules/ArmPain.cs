using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Symptoms;

namespace Jumpwright.Safety.Rules;

/// <summary>Pain of arm, shoulder or neck: what must be held is left out.</summary>
internal sealed class ArmPain : SafetyRule
{
    public override string Id => "arm-pain";

    public override string Says => "With pain above 2 of 10 in arm, shoulder or neck nothing is held: no bar, no band.";

    public override Source Source => SafetySources.CommonPractice;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        foreach (PainEpisode episode in @case.Episodes.Where(e => !e.Counting.IsEmpty))
        {
            SymptomReport worst = PainJudgement.Worst(episode.Counting);
            if (
                episode.TissuesUnder(PainRuleKind.Arm).Any()
                && !(PainJudgement.Score(worst) <= @case.Limits["joint-pain-low-work"])
            )
            {
                yield return Close(
                    new NoExternalLoad(),
                    $"Pain where a bar or band is held ({PainJudgement.Name(worst)}): no external load. It ends {PainEpisodes.Ends(@case.Limits, "joint-pain-low-work")}"
                );
            }
        }
    }
}
