using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Boxes;

/// <summary>Seat and foot-on-box starts: no fall into the dip, so nothing to absorb before the push.</summary>
public static class HighStarts
{
    private const string Method = "links from stature";
    private const double SeatAnkleDeg = 15;
    private const double Near = 10;

    /// <summary>Doubt of a hip angle from lengths that stand in for measured ones (house rule), degrees.</summary>
    private const double AngleDoubtDeg = 6;

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "high-start",
            "Start from a seat or a foot on a box",
            $"Seat: the hip joint stands 0.04 of stature above the seat, the shank leans 15° forward; cos(hip) = (hip − ankle − shank cos 15°) / thigh. "
                + $"Foot on a box of height B: shank upright, trunk upright; cos(hip) = (hip height − B − ankle − shank) / thigh. What it takes away: m g times how far the hips would fall from standing in a dip to the same place (the rise from the seat; B).",
            ["winter-segments", "common-practice", "house-rule"],
            $"Lengths are fractions of stature from memory; a measured hip height is better. Nothing is absorbed before the push, but the landing after it is a landing like any other."
        );

    /// <summary>The height for hips at 90°, and the posture at the height asked about.</summary>
    public static Outcome<HighStartPosture> Of(HighStartInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Refusal? bad = Input.First(
            Input.Outside($"Stature", input.StatureM, 1.0, 2.4, "m"),
            Input.Outside($"Body mass", input.BodyMassKg, 20, 250, "kg"),
            input.HeightM is { } h ? Input.Outside($"The height", h, 0.05, 1.0, "m") : null,
            Input.HipHeight(input.HipHeightM, input.StatureM)
        );
        if (bad is not null)
        {
            return bad;
        }

        LegLinks links = LegLinks.Of(input.StatureM, input.HipHeightM, BodySegments.DempsterWinter);
        bool seat = input.Start == HighStart.Seat;
        double ankle = seat ? SeatAnkleDeg * Math.PI / 180 : 0;
        double above = seat ? BoxNumbers.HipAboveSeat.Value * input.StatureM : 0;
        double knee = links.FootM + (links.ShankM * Math.Cos(ankle));
        double best = seat ? knee - above : links.HipM - knee;
        Sentence what = seat ? Sentence.Of($"seat") : Sentence.Of($"box under the front foot");
        var chief = new Measure("start_height_for_90_m", best, Unit.Metre, 0.02 * input.StatureM, Method);
        if (input.HeightM is not { } height)
        {
            return new HighStartPosture(
                Basis,
                [chief],
                $"Hips at 90° from a {what} of {new Length(best):0 (cm)} ± {new Length(chief.StandardUncertainty):0 cm}.",
                null
            );
        }

        double cosine = seat ? (height + above - knee) / links.ThighM : (links.HipM - height - knee) / links.ThighM;
        if (cosine is < -0.5 or > 1)
        {
            return Refusal.Of(
                $"A {what} of {new Length(height):0 cm} does not fit a stature of {new Length(input.StatureM):0 cm}: hips at 90° come from {new Length(best):0 cm}."
            );
        }

        double hipDeg = Math.Acos(cosine) * 180 / Math.PI;
        double kneeDeg = hipDeg + (seat ? SeatAnkleDeg : 0);
        double rise = seat ? links.HipM - height - above : 0;

        // A dip from standing to the same hips would have fallen so far, and would have had to be braked.
        double fall = seat ? rise : height;
        double dipJ = input.BodyMassKg * Gravity.MetresPerSecondSquared * fall;
        double dipDoubtJ = input.BodyMassKg * Gravity.MetresPerSecondSquared * 0.02 * input.StatureM;
        bool near = Math.Abs(hipDeg - 90) <= Near;
        ImmutableArray<Measure> values =
        [
            chief,
            new("start_hip_deg", hipDeg, new Unit("deg"), AngleDoubtDeg, Method),
            new("start_knee_deg", kneeDeg, new Unit("deg"), AngleDoubtDeg, Method),
            new("dip_energy_removed_J", dipJ, new Unit("J"), dipDoubtJ, Method),
        ];
        if (seat)
        {
            double weight = input.BodyMassKg * Gravity.MetresPerSecondSquared;
            values =
            [
                .. values,
                new("hip_rise_to_standing_m", rise, Unit.Metre, 0.02 * input.StatureM, Method),
                new("lift_energy_J", weight * rise, new Unit("J"), weight * 0.02 * input.StatureM, Method),
            ];
        }

        Sentence wished = near
            ? Sentence.Of($": near 90°, as wished.")
            : Sentence.Of($"; 90° would be {new Length(best):0 cm}.");
        Sentence push = seat
            ? Sentence.Of($"The hips rise {new Length(rise):0 cm} to standing, which the push has to lift.")
            : Sentence.Of($"The front leg pushes from there.");
        return new HighStartPosture(
            Basis,
            values,
            $"On a {what} of {new Length(height):0 cm} the hips start at {hipDeg:0} ± {AngleDoubtDeg:0}° and the knees at {kneeDeg:0}°"
                + $"{wished} {push} A dip from standing to the same hips would have to brake about {dipJ:0} ± {dipDoubtJ:0} J before the push: this start takes away all of that, and nothing of the landing after it.",
            near
        );
    }

    private static string Cm(double metres) => (100 * metres).ToString("0");
}
