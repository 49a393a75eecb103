using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Symptoms;

namespace Jumpwright.Safety.Rules;

/// <summary>After illness.</summary>
internal sealed class AfterIllness : SafetyRule
{
    public override string Id => "after-illness";

    public override string Says => "For seven days after a report of illness there is no high-intensity work.";

    public override Source Source => SafetySources.CommonPractice;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        int days = @case.Limits.Whole("days-after-illness");
        SymptomReport? last = @case.Symptoms.LastOrDefault(s =>
            SymptomKinds.Read(s.Kind) == SymptomKinds.Illness && s.Score is not 0
        );
        if (last is not null && @case.DaysSince(last.Date) <= days)
        {
            yield return Close(
                new NoHighIntensity(),
                $"Illness on {last.Date}: no high-intensity work up to {last.Date.PlusDays(days)}."
            );
        }
    }
}
