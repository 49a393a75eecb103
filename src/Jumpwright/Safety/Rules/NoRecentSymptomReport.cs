using Jumpwright.Quantities;
using Jumpwright.Safety.Symptoms;
using NodaTime;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Nobody asked. A missing last symptom report counts as "not met": our reading is that it closes high-intensity work and leaves
/// low work open, since the card asks about pain before anything is done. A report is any row of symptoms.csv (a 0 too) or a pain
/// score in the log; it is stale after 42 days, after 14 with an operation, a pain that counts, or a restriction.
/// </summary>
internal sealed class NoRecentSymptomReport : SafetyRule
{
    public override string Id => "symptom-report-missing";

    public override string Says =>
        "Without a symptom report of the last 42 days (14 after injury or operation) there is no high-intensity work.";

    public override Source Source => SafetySources.House;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        LocalDate? last = @case
            .Symptoms.Select(s => (LocalDate?)s.Date)
            .Concat(
                @case
                    .Completed.Where(c => c.PainDuring is not null || c.PainNextMorning is not null)
                    .Select(c => (LocalDate?)c.Date)
            )
            .Max();
        bool injured =
            @case.Athlete.Operation is not null
            || !@case.Episodes.IsEmpty
            || @case.Rows.Any(r => r.InForceOn(@case.Day));
        int days = @case.Limits.Whole(injured ? "symptom-report-stale-after-injury" : "symptom-report-stale");
        if (last is { } date && @case.DaysSince(date) <= days)
        {
            yield break;
        }

        Sentence seen = last is { } old
            ? Sentence.Of($"The last symptom report is of {old}")
            : Sentence.Of($"There is no symptom report");
        yield return Close(
            new NoHighIntensity(),
            $"{seen}: no high-intensity work until somebody has asked about pain again: an answer counts for {days} days (a 0 is one, too)."
        );
    }
}
