using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Symptoms;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Pain of a joint or muscle. Stricter than the tendon's rule, because a joint does not get used to load by being loaded in pain:
/// any pain leaves only low work, above 2 of 10, without a score, or the next morning, none.
/// </summary>
internal sealed class JointPain : SafetyRule
{
    public override string Id => "joint-pain";

    public override string Says =>
        "Any pain of a joint or muscle leaves only low work there and fewer contacts; above 2 of 10, or felt the next morning, none.";

    public override Source Source => SafetySources.CommonPractice;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        foreach (PainEpisode episode in @case.Episodes.Where(e => !e.Counting.IsEmpty))
        {
            foreach (Tissue tissue in episode.TissuesUnder(PainRuleKind.JointOrMuscle))
            {
                SymptomReport worst = PainJudgement.Worst(episode.Counting);
                SymptomReport? morning = episode.Counting.LastOrDefault(r =>
                    PainTimes.Read(r.When) == PainTime.Morning
                );
                Sentence seen = $"Pain that may be of a joint or muscle ({PainJudgement.Name(morning ?? worst)})";
                bool nothing =
                    morning is not null || !(PainJudgement.Score(worst) <= @case.Limits["joint-pain-low-work"]);
                Sentence change = $"A later report of 0 changes it, or a licensed person who names another tissue.";
                yield return Close(
                    new TierAtMost(tissue, nothing ? 0 : 1),
                    $"{seen}: {(nothing ? Sentence.Of($"nothing") : Sentence.Of($"only low work (tier 1)"))} on the {TissueWords.Of(tissue)}. {change}"
                );
                if (tissue == Tissue.Achilles)
                {
                    yield return Close(
                        new NoAnkleSprings(),
                        $"{seen}: no hops or bounces; here pushing to a box comes before them. {change}"
                    );
                    yield return Close(new NoRunUps(), $"{seen}: no run-ups, walked ones neither. {change}");
                }

                yield return Close(new NoHighIntensity(), $"{seen}: no high-intensity work. {change}");
                yield return Close(
                    new ContactsPerSessionAtMost(@case.Limits.Whole("contacts-under-caution")),
                    $"{seen}: at most {@case.Limits["contacts-under-caution"]:0} contacts a session. {change}"
                );
            }
        }
    }
}
