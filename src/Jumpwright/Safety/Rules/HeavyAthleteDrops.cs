using Jumpwright.Quantities;

namespace Jumpwright.Safety.Rules;

/// <summary>Over 100 kg, or mass unknown.</summary>
internal sealed class HeavyAthleteDrops : SafetyRule
{
    public override string Id => "heavy-athlete-drop";

    public override string Says => "Over 100 kg, or with an unknown mass, no drop is higher than 0.46 m.";

    public override Source Source => SafetySources.Handbook;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        double heavyKg = @case.Limits["heavy-athlete"];
        double dropM = @case.Limits["heavy-athlete-drop"];
        // A mass outside 20 to 250 kg is a slip of the pen or of the unit, so not known.
        double? mass = @case.Athlete.BodyMassKg is { } m && m >= 20 && m <= 250 ? m : null;
        if (mass <= heavyKg)
        {
            yield break;
        }

        yield return Close(
            new DropAtMost(dropM),
            mass is { } kg
                ? Sentence.Of(
                    $"Body mass {new Mass(kg):0.# kg}, over {new Mass(heavyKg):0 kg}: no drop above {new Length(dropM):0.00 m} (handbook value, from memory). A mass of {new Mass(heavyKg):0 kg} or less changes it."
                )
                : Sentence.Of(
                    $"Body mass unknown: no drop above {new Length(dropM):0.00 m} (handbook value for athletes over {new Mass(heavyKg):0 kg}, from memory). Weigh the athlete to change it."
                )
        );
    }
}
