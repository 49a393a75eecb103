using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using MathNet.Numerics.Statistics;

namespace Jumpwright.Calculators.Drops;

/// <summary>Drops: speed and energy at contact, stepped off, never jumped off.</summary>
public static class DropDemands
{
    /// <summary>Real drop over the box's height, before any of the athlete's own was measured: 1 ± 0.10.</summary>
    public static Coefficient ShareDoubt { get; } =
        new(
            "drop-share-doubt",
            0.10,
            Unit.One,
            null,
            Bibliography.Get("house-rule"),
            "People lower themselves or hop off: the box is not the drop (Baca 1999; McMahon et al. 2021)."
        );

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "drop",
            "Drop from a box",
            $"Speed v = √(2 g H), energy m g H at touch-down; H = box height × the athlete's own mean of measured drop over box (1 ± 0.10 before any was measured).",
            ["baca-1999", "mcmahon-2021", "house-rule"],
            $"The box's height is not the drop: stepping, lowering and jumping off differ. Energy at contact is no measure of what a tissue bears."
        );

    /// <summary>Speed and energy; refused for a jump off the box.</summary>
    public static Outcome<DropDemand> Of(DropInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Refusal? bad = Input.First(
            Input.Outside($"The box", input.BoxHeightM, 0.05, 1.2, "m"),
            Input.Outside($"Body mass", input.BodyMassKg, 20, 250, "kg"),
            input.JumpHeightM is { } jump ? Input.Outside($"Jump height", jump, 0.02, 1.2, "m") : null
        );
        if (bad is not null)
        {
            return bad;
        }

        if (input.Start != DropStart.Step)
        {
            return Refusal.Of(
                input.Start == DropStart.Jump
                    ? Sentence.Of(
                        $"Jumping off adds its own height to the drop, and nobody knows how much: step off the box, then ask again."
                    )
                    : Sentence.Of($"Nobody said how the box is left: step off, don't jump off, and say so.")
            );
        }

        double[] shares = input.RealShares.IsDefaultOrEmpty ? [] : [.. input.RealShares];
        if (shares.FirstOrDefault(s => !(s is > 0.2 and < 2)) is var odd && odd != 0)
        {
            return Refusal.Of(
                $"A measured drop of {odd:0.00} times the box is not a step from that box: check the box written for that trial."
            );
        }

        double share = shares.Length == 0 ? 1 : shares.Mean();
        double shareDoubt = shares.Length switch
        {
            0 => ShareDoubt.Value,
            1 => ShareDoubt.Value,
            _ => Math.Max(shares.StandardDeviation(), 0.02),
        };
        double height = share * input.BoxHeightM;
        double doubt = shareDoubt * input.BoxHeightM;
        double speed = Flight.TouchDownSpeedMS(height);
        double weight = input.BodyMassKg * Gravity.MetresPerSecondSquared;
        string method = shares.Length == 0 ? "nominal box height" : $"own share of {shares.Length} measured drops";
        Sentence compared = input.JumpHeightM is { } own
            ? Sentence.Of(
                $", {height / own:0.0} times what landing from their own jump of {new Length(own):0 cm} brings"
            )
            : Sentence.Of($"");
        return new DropDemand(
            Basis,
            [
                new(
                    "touch_down_speed_m_s",
                    speed,
                    Unit.MetrePerSecond,
                    Gravity.MetresPerSecondSquared * doubt / speed,
                    method
                ),
                new("energy_J", weight * height, new Unit("J"), weight * doubt, method),
                new(
                    "energy_J_kg",
                    Gravity.MetresPerSecondSquared * height,
                    new Unit("J/kg"),
                    Gravity.MetresPerSecondSquared * doubt,
                    method
                ),
                new("expected_drop_height_m", height, Unit.Metre, doubt, method),
            ],
            $"Stepped from {new Length(input.BoxHeightM):0 cm} the real drop is likely {new Length(height):0 (cm)} ± {new Length(doubt):0 cm}: {speed:0.00} m/s and {weight * height:0} J at contact{compared}."
        )
        {
            NextTest =
                shares.Length < 3
                    ? Sentence.Of(
                        $"Three drop jumps on a plate with a quiet stand at the end tell this athlete's real drop."
                    )
                    : null,
        };
    }
}
