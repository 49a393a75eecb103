using Jumpwright.Quantities;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Under 16, or age unknown. This is caution, not evidence of harm: the handbook and Allerheiligen and Rogers keep depth jumps from
/// the young, while Lloyd, Meyers and Oliver 2011 let trained, competent youths drop-jump.
/// </summary>
internal sealed class Youth : SafetyRule
{
    /// <summary>Years.</summary>
    public static readonly Coefficient Age = new(
        "age-for-depth-jumps",
        16,
        new Unit("y"),
        null,
        SafetySources.Handbook,
        "Caution, not evidence of harm: staged youth models let trained, competent youths drop-jump."
    );

    /// <summary>Highest drop, m: below the 0.30 m from which a drop counts as high-intensity.</summary>
    public static readonly Coefficient Drop = new("youth-drop", 0.29, Unit.Metre, null, SafetySources.CommonPractice);

    public override string Id => "youth";

    public override string Says =>
        "Under 16, or with an unknown age, there are no depth jumps and no drops of 0.30 m or more (caution; disputed).";

    public override Source Source => SafetySources.Handbook;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        int? age = @case.Athlete.AgeOn(@case.Day);
        if (age >= Age.Value)
        {
            yield break;
        }

        string seen = age is { } years and >= 0
            ? $"{years} years old on {Day.Of(@case.Day)}"
            : "Age unknown: no usable birth date is written down";
        string change = age is >= 0
            ? $"Caution, not evidence of harm: youth models let trained, competent youths drop-jump. It ends on "
                + $"{Day.Of(@case.Athlete.BirthDate!.Value.PlusYears((int)Age.Value))}."
            : "A birth date of 16 or more years ago changes it.";
        yield return Close(new NoDepthJumps(), $"{seen}: no depth jumps. {change}");
        yield return Close(new DropAtMost(Drop.Value), $"{seen}: no drop of 0.30 m or more. {change}");
    }
}
