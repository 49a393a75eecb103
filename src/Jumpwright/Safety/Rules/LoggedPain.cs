using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Symptoms;
using NodaTime;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Pain in the log of work done has a score but no place, so it counts for every tissue. The worst of the last logged day with a pain
/// score counts for a fortnight, and after it for as long as nobody asked again: silence is no sign of healing. A scored report of
/// pain in symptoms.csv of the same day or later is that asking, since it names the place and has its own rule. Up to 2 of 10 is
/// taken for free here, but not in a new place; a new place without a score closes everything until somebody asked.
/// </summary>
internal sealed class LoggedPain : SafetyRule
{
    public override string Id => "logged-pain";

    public override string Says =>
        "Pain above 2 of 10, or in a new place, in the last logged session leaves only low work on every tissue, above 5 nothing until somebody asked where.";

    public override Source Source => SafetySources.House;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        CompletedItem[] scored = [.. @case.Completed.Where(c => Worst(c) is not null)];
        if (scored.Length == 0 || IsAnswered(scored[^1].Date, @case))
        {
            yield break;
        }

        CompletedItem[] last = [.. scored.Where(c => c.Date == scored[^1].Date)];
        CompletedItem worst =
            last.FirstOrDefault(c => double.IsNaN(Worst(c)!.Value))
            ?? last.OrderByDescending(c => c.PainSiteNew).MaxBy(Worst)!;
        bool fresh = last.Any(c => c.PainSiteNew);
        double score = Worst(worst)!.Value;
        var exercise = SaidExercise.ById(worst.ExerciseId);
        Sentence what = double.IsNaN(score)
            ? Sentence.Of($"Logged pain without a score with {exercise:small} on {worst.Date}")
            : Sentence.Of($"Logged pain of {score:0.#} of 10 with {exercise:small} on {worst.Date}");
        Sentence seen = fresh ? Sentence.Of($"{what}, in a new place") : what;
        Sentence change = $"A later logged session with 2 or less changes it.";
        if (!(score <= @case.Limits["tendon-pain-top"]))
        {
            Sentence whom = $"the athlete where it hurts, and a clinician if it stays";
            yield return Close(new NothingPlanned(whom), $"{seen}: nothing is planned. Ask {whom}. {change}");
        }
        else if (fresh || score > @case.Limits["tendon-pain-free-work"])
        {
            foreach (Tissue tissue in Enum.GetValues<Tissue>())
            {
                yield return Close(
                    new TierAtMost(tissue, 1),
                    $"{seen}, place not said: only low work (tier 1) on the {TissueWords.Of(tissue)}. {change}"
                );
            }

            yield return Close(new NoHighIntensity(), $"{seen}, place not said: no high-intensity work. {change}");
            yield return Close(
                new ContactsPerSessionAtMost(@case.Limits.Whole("contacts-under-caution")),
                $"{seen}: at most {@case.Limits["contacts-under-caution"]:0} contacts a session. {change}"
            );
        }
    }

    private static bool IsAnswered(LocalDate logged, SafetyCase @case) =>
        @case.DaysSince(logged) > @case.Limits.Whole(PainEpisodes.Window)
        && @case.Symptoms.Any(s =>
            s.Date >= logged
            && SymptomKinds.Read(s.Kind) is SymptomKinds.Pain or SymptomKinds.Stiffness
            && PainJudgement.Score(s) is not null
        );

    private static double? Worst(CompletedItem item) =>
        item.PainDuring is null && item.PainNextMorning is null
            ? item.PainSiteNew
                ? double.NaN
                : null
            : Math.Max(item.PainDuring ?? 0, item.PainNextMorning ?? 0);
}
