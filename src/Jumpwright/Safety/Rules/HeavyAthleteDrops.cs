using Jumpwright.Quantities;

namespace Jumpwright.Safety.Rules;

/// <summary>Over 100 kg, or mass unknown.</summary>
internal sealed class HeavyAthleteDrops : SafetyRule
{
    /// <summary>Mass above which the cap holds.</summary>
    public static readonly Coefficient MassKg = new("heavy-athlete", 100, Unit.Kilogram, null, SafetySources.Handbook);

    /// <summary>Highest drop.</summary>
    public static readonly Coefficient DropM = new(
        "heavy-athlete-drop",
        0.46,
        Unit.Metre,
        null,
        SafetySources.Handbook
    );

    public override string Id => "heavy-athlete-drop";

    public override string Says => "Over 100 kg, or with an unknown mass, no drop is higher than 0.46 m.";

    public override Source Source => SafetySources.Handbook;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        // A mass outside 20 to 250 kg is a slip of the pen or of the unit, so not known.
        double? mass = @case.Athlete.BodyMassKg is { } m && m >= 20 && m <= 250 ? m : null;
        if (mass <= MassKg.Value)
        {
            yield break;
        }

        yield return Close(
            new DropAtMost(DropM.Value),
            mass is { } kg
                ? FormattableString.Invariant(
                    $"Body mass {kg:0.#} kg, over {MassKg.Value:0} kg: no drop above {DropM.Value:0.00} m (handbook value, from memory). A mass of {MassKg.Value:0} kg or less changes it."
                )
                : FormattableString.Invariant(
                    $"Body mass unknown: no drop above {DropM.Value:0.00} m (handbook value for athletes over {MassKg.Value:0} kg, from memory). Weigh the athlete to change it."
                )
        );
    }
}
