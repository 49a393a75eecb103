using Jumpwright.Quantities;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Under 16, or age unknown. This is caution, not evidence of harm: the handbook and Allerheiligen and Rogers keep depth jumps from
/// the young, while Lloyd, Meyers and Oliver 2011 let trained, competent youths drop-jump.
/// </summary>
internal sealed class Youth : SafetyRule
{
    public override string Id => "youth";

    public override string Says =>
        "Under 16, or with an unknown age, there are no depth jumps and no drops of 0.30 m or more (caution; disputed).";

    public override Source Source => SafetySources.Handbook;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        double dropM = @case.Limits["youth-drop"];
        int? age = @case.Athlete.AgeOn(@case.Day);
        if (age >= @case.Limits["age-for-depth-jumps"])
        {
            yield break;
        }

        Sentence seen = age is { } years and >= 0
            ? Sentence.Of($"{years} years old on {@case.Day}")
            : Sentence.Of($"Age unknown: no usable birth date is written down");
        Sentence change = age is >= 0
            ? Sentence.Of(
                $"Caution, not evidence of harm: youth models let trained, competent youths drop-jump. It ends on {@case.Athlete.BirthDate!.Value.PlusYears(@case.Limits.Whole("age-for-depth-jumps"))}."
            )
            : Sentence.Of($"A birth date of 16 or more years ago changes it.");
        yield return Close(new NoDepthJumps(), $"{seen}: no depth jumps. {change}");
        yield return Close(
            new DropAtMost(dropM),
            $"{seen}: no drop of {(dropM >= 0.29 ? Sentence.Of($"{new Length(0.30):0.00 m} or more") : Sentence.Of($"more than {new Length(dropM):0.00 m}"))}. {change}"
        );
    }
}
