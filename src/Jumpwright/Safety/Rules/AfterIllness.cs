using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Symptoms;

namespace Jumpwright.Safety.Rules;

/// <summary>After illness.</summary>
internal sealed class AfterIllness : SafetyRule
{
    /// <summary>Days after the last report of illness.</summary>
    public static readonly Coefficient Days = new(
        "days-after-illness",
        7,
        new Unit("d"),
        null,
        SafetySources.CommonPractice
    );

    public override string Id => "after-illness";

    public override string Says => "For seven days after a report of illness there is no high-intensity work.";

    public override Source Source => SafetySources.CommonPractice;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        SymptomReport? last = @case.Symptoms.LastOrDefault(s =>
            SymptomKinds.Read(s.Kind) == SymptomKinds.Illness && s.Score is not 0
        );
        if (last is not null && @case.DaysSince(last.Date) <= Days.Value)
        {
            yield return Close(
                new NoHighIntensity(),
                $"Illness on {Day.Of(last.Date)}: no high-intensity work up to {Day.Of(last.Date.PlusDays((int)Days.Value))}."
            );
        }
    }
}
