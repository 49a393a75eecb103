using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Bands;

/// <summary>Jumps against bands: what they ask, and whether the anchor holds where the band is longest, at the apex.</summary>
public static class BandJumps
{
    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "band-jump",
            "Jump against bands",
            $"Tension F = a x + b x² (x: stretch beyond rest), fitted to scale readings. Length L = √(d² + z²), z the attachment's height above the anchor; "
                + $"vertical part F z / L, horizontal part F d / L. Judged at z for standing + take-off rise + mean height + 2 SD, with F + 2u: "
                + $"vertical ≤ ½ anchor's weight; horizontal ≤ ½ μ (weight − vertical); left and right within 10 %. Extra work = elastic energy gained.",
            ["mcmaster-2010", "bands-2019", "common-practice", "house-rule"],
            $"Colour is not force, labels name no elongation, and two bands of one colour differ. A height under a band is not g t²/8. Bands creep and age: a curve is true for the day it was measured."
        );

    /// <summary>The demands and the verdict; refused where a curve can't be drawn or the geometry can't be meant.</summary>
    public static Outcome<BandJump> Of(BandJumpInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Refusal? bad = Input.First(
            Input.Outside($"The height at which the bands meet the athlete", input.AttachmentStandingM, 0.3, 2.2, "m"),
            Input.Outside($"The dip", input.DipM, 0, 0.8, "m"),
            Input.Outside($"Jump height", input.JumpHeightM, 0.02, 1.2, "m"),
            Input.Outside($"The SD of jump height", input.JumpHeightSdM, 0, 0.3, "m"),
            Input.Outside($"Body mass", input.BodyMassKg, 20, 250, "kg"),
            Input.Outside($"The coefficient of friction", input.Friction, 0.05, 1.5, ""),
            Input.Outside($"The scale's uncertainty", input.ScaleUncertaintyN, 0.1, 50, "N"),
            Bad(BandPlace.Left, input.Left),
            Bad(BandPlace.Right, input.Right)
        );
        if (bad is not null)
        {
            return bad;
        }

        if (
            !Curve(BandPlace.Left, input.Left, input.ScaleUncertaintyN).TryGet(out BandCurve? left, out Refusal? noLeft)
        )
        {
            return noLeft;
        }

        if (
            !Curve(BandPlace.Right, input.Right, input.ScaleUncertaintyN)
                .TryGet(out BandCurve? right, out Refusal? noRight)
        )
        {
            return noRight;
        }

        double standing = input.AttachmentStandingM;
        double takeOff = standing + BandMargins.TakeOffRise.Value;
        double apex = takeOff + input.JumpHeightM + (2 * input.JumpHeightSdM);
        Pull l = new(input.Left, left);
        Pull r = new(input.Right, right);
        string method = left.Method == right.Method ? left.Method : "one measured, one nominal";
        double bottom = standing - input.DipM;
        double weight = input.BodyMassKg * Gravity.MetresPerSecondSquared;
        double standingVertical = l.VerticalN(standing) + r.VerticalN(standing);
        double standingDoubt = Root(l.VerticalUncertaintyN(standing), r.VerticalUncertaintyN(standing));
        ImmutableArray<Measure> values =
        [
            Tension("band_tension_apex_N", apex),
            Tension("band_tension_standing_N", standing),
            Tension("band_tension_bottom_N", bottom),
            Work("band_work_push_J", takeOff),
            Work("band_work_apex_J", apex),
            new(
                "weight_added_standing_pct",
                100 * standingVertical / weight,
                Unit.Percent,
                100 * standingDoubt / weight,
                method
            ),
        ];
        ImmutableArray<Check> checks =
        [
            .. BandChecks.Of(BandPlace.Left, l, apex, input.Friction),
            .. BandChecks.Of(BandPlace.Right, r, apex, input.Friction),
            BandChecks.Alike(l, r, apex),
        ];
        bool holds = checks.All(c => c.State == CheckState.Met);
        Check? first = checks.FirstOrDefault(c => c.State != CheckState.Met);
        Sentence verdict = holds
            ? Sentence.Of($"Every condition of the set-up is met.")
            : Sentence.Of($"Not safe: {first!.Sentence}");
        return new BandJump(
            Basis,
            values,
            $"Both bands together pull {Say(values[2])} at the bottom, {Say(values[1])} in standing and {Say(values[0])} at the apex of the highest jump to be expected ({new Length(apex - takeOff):0 cm}); the push takes {values[3].Value:0} ± {values[3].StandardUncertainty:0} J more. {verdict}",
            checks,
            left,
            right,
            Math.Max(l.LengthM(apex), r.LengthM(apex))
        )
        {
            Warnings =
            [
                .. method == "scale-readings"
                    ? Array.Empty<Sentence>()
                    : [$"A curve is nominal, not measured: three readings of a hand scale would replace it."],
                $"Let nobody stand in the line of the bands; a band that is let go or an anchor that lifts comes fast.",
            ],
            NextTest =
                method == "scale-readings"
                    ? null
                    : Sentence.Of(
                        $"Hang the band on a hand scale and read it at three stretches, the longest at the apex length."
                    ),
        };

        Measure Tension(string name, double heightM) =>
            new(
                name,
                l.TensionN(heightM) + r.TensionN(heightM),
                Unit.Newton,
                Root(l.TensionUncertaintyN(heightM), r.TensionUncertaintyN(heightM)),
                method
            );

        Measure Work(string name, double toM) =>
            new(
                name,
                l.WorkJ(bottom, toM) + r.WorkJ(bottom, toM),
                new Unit("J"),
                Root(l.WorkUncertaintyJ(bottom, toM), r.WorkUncertaintyJ(bottom, toM)),
                method
            );
    }

    private static string Say(Measure tension) => $"{tension.Value:0} ± {tension.StandardUncertainty:0} N";

    private static double Root(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static Refusal? Bad(BandPlace side, BandSide band) =>
        Input.First(
            Input.Outside($"The {side.Said} band's length at rest", band.RestM, 0.1, 3, "m"),
            Input.Outside($"The {side.Said} anchor's distance", band.AnchorDistanceM, 0, 3, "m"),
            Input.Outside($"The {side.Said} anchor's height", band.AnchorHeightM, 0, 0.5, "m"),
            band.AnchorMassKg is { } mass
                ? Input.Outside($"The {side.Said} anchor's mass", mass, 0.5, 500, "kg")
                : null,
            band.NominalStiffnessNM is { } k
                ? Input.Outside($"The {side.Said} band's stated stiffness", k, 5, 5000, "N/m")
                : null,
            band.GreatestStretchStatedM is { } stretch
                ? Input.Outside($"The {side.Said} band's greatest stretch", stretch, 0.05, 6, "m")
                : null
        );

    private static Outcome<BandCurve> Curve(BandPlace side, BandSide band, double scaleUncertaintyN)
    {
        if (band.Readings.IsDefaultOrEmpty)
        {
            return band.NominalStiffnessNM is { } stiffness
                ? BandCurve.Nominal(band.RestM, stiffness)
                : Refusal.Of(
                    $"The {side.Said} band has neither scale readings nor a stated stiffness: read a hand scale at three stretches. A colour is no force."
                );
        }

        return BandCurve
            .Fit(
                band.RestM,
                0.005,
                [.. band.Readings.Select(r => r.LengthM)],
                [.. band.Readings.Select(r => r.ForceN)],
                scaleUncertaintyN
            )
            .TryGet(out BandCurve? curve, out Refusal? refusal)
            ? curve
            : Refusal.Of($"The {side.Said} band: {refusal.Said}");
    }
}
