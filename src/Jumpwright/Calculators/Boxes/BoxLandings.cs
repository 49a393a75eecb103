using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Boxes;

/// <summary>Boxes to land on: a box's height is not the jump's.</summary>
public static class BoxLandings
{
    private const string Method = "links from stature";
    private static readonly Unit Degree = new("deg");

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "box-landing",
            "Landing on a box",
            $"Four links (foot, shank, thigh, all above) with the centre of mass above the middle of the foot give its height c(knee). "
                + $"Ceiling = h + c(0°) − c(90°) − 0.10 m − 2u; proposed: 0.10 m lower. Landing on a box of height H: c = c(0°) + h − H − clearance, at most c(30°). "
                + $"The box takes m g H of the energy m g (c(0°) + h − c) that the same landing on the floor would have.",
            ["winter-segments", "de-leva-1996", "vanrenterghem-2004", "common-practice", "house-rule"],
            $"A box height mixes jumping with folding at hip, knee and ankle; a taller box is not a harder training (the landing is softer, the risk is the shin and the step down). The two segment models differ by 40 % on the thigh's mass."
        );

    /// <summary>Ceiling and proposal, and what the box asked about demands; refused where it can't be landed on at all.</summary>
    public static Outcome<BoxLanding> Of(BoxLandingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Refusal? bad = Input.First(
            Input.Outside($"Stature", input.StatureM, 1.0, 2.4, "m"),
            Input.Outside($"Body mass", input.BodyMassKg, 20, 250, "kg"),
            Input.Outside($"Jump height", input.JumpHeightM, 0.02, 1.2, "m"),
            Input.Outside($"The doubt of jump height", input.JumpHeightUncertaintyM, 0, 0.3, "m"),
            input.BoxHeightM is { } b ? Input.Outside($"The box", b, 0.05, 1.6, "m") : null,
            Input.HipHeight(input.HipHeightM, input.StatureM)
        );
        if (bad is not null)
        {
            return bad;
        }

        LegLinks links = LegLinks.Of(input.StatureM, input.HipHeightM, BodySegments.DempsterWinter);
        LegLinks rival = LegLinks.Of(
            input.StatureM,
            input.HipHeightM,
            input.Female == true ? BodySegments.DeLevaWomen : BodySegments.DeLevaMen
        );
        (double fall, double postureDoubt) = HalfSquatFall(links, rival);
        double doubt = Math.Sqrt(Square(input.JumpHeightUncertaintyM) + Square(postureDoubt));
        double ceiling = input.JumpHeightM + fall - BoxNumbers.Clearance.Value - (2 * doubt);
        double step = Math.Floor((ceiling - BoxNumbers.Step.Value + 1e-9) / 0.05) * 0.05;
        double? proposed = step >= 0.05 ? Math.Round(step, 2) : null;
        var values = ImmutableArray.CreateBuilder<Measure>();
        values.Add(new("box_ceiling_m", ceiling, Unit.Metre, doubt, Method));
        if (proposed is { } p)
        {
            values.Add(new("box_proposed_m", p, Unit.Metre, 0, Method));
        }

        values.Add(
            new("real_rise_m", input.JumpHeightM, Unit.Metre, input.JumpHeightUncertaintyM, "jump from the floor")
        );
        Sentence allowed = proposed is { } q
            ? Sentence.Of($"proposed: {new Length(q):0 cm}.")
            : Sentence.Of($"no box is proposed: jump to a mat or a line.");
        Sentence sentence =
            $"A jump of {new Length(input.JumpHeightM):0 (cm)} ± {new Length(input.JumpHeightUncertaintyM):0 cm} lands no deeper than a half squat on a box of at most {new Length(ceiling):0 cm}; {allowed}";
        if (input.BoxHeightM is not { } box)
        {
            return new BoxLanding(Basis, values.ToImmutable(), sentence, ceiling, proposed, null, PaddedEdge: false);
        }

        double apex = links.StandingCentreM + input.JumpHeightM;
        double soft = links.Squat(BoxNumbers.SoftLanding.Value).CentreM;
        double reachable = apex - box - BoxNumbers.Clearance.Value;
        double centre = Math.Min(soft, reachable);
        if (links.KneeDegAt(centre) is not { } knee)
        {
            return Refusal.Of(
                $"A box of {new Length(box):0 cm} can't be landed on with feet clear of its edge from a jump of {new Length(input.JumpHeightM):0 cm}: take at most {new Length(Math.Max(ceiling, 0)):0 cm}."
            );
        }

        LinkPosture posture = links.Squat(knee);
        double energy = input.BodyMassKg * Gravity.MetresPerSecondSquared * (apex - box - centre);
        double removed = 100 * box / (apex - centre);
        bool padded = box > BoxNumbers.PaddedAbove.Value + 1e-9;
        double kneeDoubt = Math.Abs((links.KneeDegAt(Math.Min(soft, reachable - doubt)) ?? 130) - knee);
        values.AddRange(
            new Measure("landing_knee_deg", posture.KneeDeg, Degree, kneeDoubt, Method),
            new Measure("landing_hip_deg", posture.HipDeg, Degree, 1.5 * kneeDoubt, Method),
            new Measure(
                "landing_energy_J",
                energy,
                new Unit("J"),
                input.BodyMassKg * Gravity.MetresPerSecondSquared * doubt,
                Method
            ),
            new Measure(
                "landing_speed_m_s",
                Flight.TouchDownSpeedMS(apex - box - centre),
                Unit.MetrePerSecond,
                Gravity.MetresPerSecondSquared * doubt / Flight.TouchDownSpeedMS(apex - box - centre),
                Method
            ),
            new Measure("demand_removed_pct", removed, Unit.Percent, removed * doubt / (apex - centre), Method),
            new Measure(
                "folding_m",
                Math.Max(0, box + BoxNumbers.Clearance.Value - input.JumpHeightM),
                Unit.Metre,
                doubt,
                Method
            )
        );
        return new BoxLanding(
            Basis,
            values.ToImmutable(),
            $"{sentence} On {new Length(box):0 cm} the knees bend to {posture.KneeDeg:0} ± {kneeDoubt:0}° (a half squat is {BoxNumbers.HalfSquat.Value:0}°) and the hips to {posture.HipDeg:0} ± {1.5 * kneeDoubt:0}°; the box takes {removed:0} % of what the same landing on the floor would ask, "
                + $"and the centre of mass rises {new Length(input.JumpHeightM):0 cm} whatever the box.",
            ceiling,
            proposed,
            posture,
            padded
        )
        {
            Warnings = [.. Warn()],
            NextTest =
                doubt > 0.05
                    ? Sentence.Of(
                        $"Three more jumps from the floor and a measured hip height would narrow the ceiling."
                    )
                    : null,
        };

        IEnumerable<Sentence> Warn()
        {
            if (box > ceiling)
            {
                yield return $"{new Length(box):0 cm} is above the ceiling of {new Length(ceiling):0 cm}: with {new Length(BoxNumbers.Clearance.Value):0 cm} kept over the edge and two standard uncertainties for the doubt, the landing may be deeper than a half squat, or miss the edge.";
            }

            if (padded)
            {
                yield return $"Above {new Length(BoxNumbers.PaddedAbove.Value):0 cm} use a box with a padded or folding edge.";
            }

            yield return $"Step down from the box; don't jump down.";
        }
    }

    /// <summary>
    /// How far the centre of mass falls from standing into a half squat, m, with its standard uncertainty: the doubt of the posture
    /// and what the two segment tables differ by.
    /// </summary>
    public static (double FallM, double UncertaintyM) HalfSquatFall(double statureM) =>
        HalfSquatFall(
            LegLinks.Of(statureM, null, BodySegments.DempsterWinter),
            LegLinks.Of(statureM, null, BodySegments.DeLevaMen)
        );

    private static (double FallM, double UncertaintyM) HalfSquatFall(LegLinks links, LegLinks rival)
    {
        double half = BoxNumbers.HalfSquat.Value;
        double fall = links.StandingCentreM - links.Squat(half).CentreM;
        double rivalFall = rival.StandingCentreM - rival.Squat(half).CentreM;
        return (fall, Math.Sqrt(Square(BoxNumbers.PostureDoubt.Value * links.StatureM) + Square(fall - rivalFall)));
    }

    private static string Cm(double metres) => (100 * metres).ToString("0");

    private static double Square(double x) => x * x;
}
