using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Symptoms;
using NodaTime;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Pain of a tendon: up to 2 of 10 is free, up to 5 leaves low work, above leaves nothing on that tendon. The next morning outranks a
/// low score during: worse than the work of the day before is at least caution, and rising from morning to morning or from week to
/// week moves the grade one step down. A sore Achilles does no ankle springs and no run-ups either, however low (<c>common practice</c>): the usual
/// order of the stages is no rule there, and pushing to a box comes before hops.
/// </summary>
internal sealed class TendonPain : SafetyRule
{
    public override string Id => "tendon-pain";

    public override string Says =>
        "Tendon pain above 2 of 10 leaves only low work on that tendon and fewer contacts, above 5 none; worse next morning, or rising, "
        + "outranks a low score during.";

    public override Source Source => SafetySources.PainMonitoring;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        foreach (PainEpisode episode in @case.Episodes)
        {
            foreach (Tissue tissue in episode.TissuesUnder(PainRuleKind.Tendon))
            {
                if (episode.Counting.IsEmpty)
                {
                    continue;
                }

                PainJudgement judged = Judge(episode, @case.Limits);
                if (judged.Grade == PainGrade.Fine)
                {
                    continue;
                }

                // What caution closes, a worse grade closes too: more pain must never open anything.
                (int tier, Sentence left, Sentence change) =
                    judged.Grade == PainGrade.Nothing
                        ? (
                            0,
                            Sentence.Of($"nothing"),
                            Sentence.Of($"Low work opens again {PainEpisodes.Ends(@case.Limits, "tendon-pain-top")}")
                        )
                        : (
                            1,
                            Sentence.Of($"only low work (tier 1)"),
                            Sentence.Of($"It ends {PainEpisodes.Ends(@case.Limits, "tendon-pain-free-work")}")
                        );
                yield return Close(
                    new TierAtMost(tissue, tier),
                    $"{judged.Seen}: {left} on the {TissueWords.Of(tissue)}. {change}"
                );
                if (tissue == Tissue.Achilles)
                {
                    yield return Close(
                        new NoAnkleSprings(),
                        $"{judged.Seen}: no hops or bounces; here pushing to a box comes before them. {change}"
                    );
                    yield return Close(new NoRunUps(), $"{judged.Seen}: no run-ups, walked ones neither. {change}");
                }

                yield return Close(new NoHighIntensity(), $"{judged.Seen}: no high-intensity work. {change}");
                yield return Close(
                    new ContactsPerSessionAtMost(@case.Limits.Whole("contacts-under-caution")),
                    $"{judged.Seen}: at most {@case.Limits["contacts-under-caution"]:0} contacts a session. {change}"
                );
            }
        }
    }

    private static PainJudgement Judge(PainEpisode episode, LimitBook limits)
    {
        SymptomReport worst = PainJudgement.Worst(episode.Counting);
        PainGrade grade = Grade(PainJudgement.Score(worst), limits);
        Sentence seen = $"{PainJudgement.Name(worst):capital}";
        if (RisingMorning(episode) is { } risen)
        {
            return new(Stricter(grade), $"{PainJudgement.Name(risen):capital}, rising from morning to morning");
        }

        if (RisingWeek(episode) is { } higher)
        {
            return new(Stricter(grade), $"{PainJudgement.Name(higher):capital}, more than in the week before");
        }

        return grade == PainGrade.Fine && WorseThanWork(episode) is { } worse
            ? new(PainGrade.Caution, $"{PainJudgement.Name(worse):capital}, worse than the work before it")
            : new(grade, seen);
    }

    /// <summary>A morning above the morning reported before it.</summary>
    private static SymptomReport? RisingMorning(PainEpisode episode)
    {
        SymptomReport[] mornings =
        [
            .. episode.Counting.Where(r =>
                PainTimes.Read(r.When) == PainTime.Morning && PainJudgement.Score(r) is not null
            ),
        ];
        return mornings.Zip(mornings.Skip(1)).LastOrDefault(pair => pair.Second.Score > pair.First.Score).Second;
    }

    /// <summary>A morning above the score during or after the work of that day or the day before.</summary>
    private static SymptomReport? WorseThanWork(PainEpisode episode) =>
        episode.Counting.LastOrDefault(morning =>
            PainTimes.Read(morning.When) == PainTime.Morning
            && episode.Counting.Any(work =>
                PainTimes.Read(work.When) == PainTime.DuringOrAfter
                && Period.DaysBetween(work.Date, morning.Date) is 0 or 1
                && PainJudgement.Score(morning) > PainJudgement.Score(work)
            )
        );

    /// <summary>A report above all of the seven days that ended a week before it.</summary>
    private static SymptomReport? RisingWeek(PainEpisode episode) =>
        episode.Counting.LastOrDefault(now =>
            PainJudgement.Score(now)
            > episode
                .Counting.Where(before => Period.DaysBetween(before.Date, now.Date) is >= 7 and <= 13)
                .Max(PainJudgement.Score)
        );

    private static PainGrade Grade(double? score, LimitBook limits) =>
        score is not { } s || s > limits["tendon-pain-top"] ? PainGrade.Nothing
        : s > limits["tendon-pain-free-work"] ? PainGrade.Caution
        : PainGrade.Fine;

    private static PainGrade Stricter(PainGrade grade) =>
        grade == PainGrade.Fine ? PainGrade.Caution : PainGrade.Nothing;
}
