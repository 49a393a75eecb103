using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Bands;

/// <summary>The conditions of a band set-up, each judged at the apex with tension + 2u. Unknown closes.</summary>
internal static class BandChecks
{
    internal static IEnumerable<Check> Of(string side, Pull pull, double apexM, double friction)
    {
        yield return Kind(side, pull.Side.Anchor);
        yield return Lifts(side, pull, apexM);
        yield return Slides(side, pull, apexM, friction);
        yield return Stretch(side, pull, apexM);
        yield return new(
            $"{side}-wear",
            pull.Side.WearChecked ? CheckState.Met : CheckState.NotKnown,
            pull.Side.WearChecked
                ? $"The {side} band was looked over before this use."
                : $"the {side} band was not looked over for nicks, cracks and pale spots before this use."
        );
    }

    internal static Check Alike(Pull left, Pull right, double apexM)
    {
        double l = left.TensionN(apexM);
        double r = right.TensionN(apexM);
        double difference = l + r > 0 ? 200 * Math.Abs(l - r) / (l + r) : 0;
        bool alike = difference <= BandMargins.LeftRight.Value;
        return new(
            "left-right",
            alike ? CheckState.Met : CheckState.NotMet,
            $"{(alike ? "Left" : "left")} and right differ by {difference:0} % at the apex ({l:0} and {r:0} N; at most {BandMargins.LeftRight.Value:0} %)."
        );
    }

    private static Check Kind(string side, AnchorKind anchor) =>
        anchor switch
        {
            AnchorKind.FlatSided => new($"{side}-anchor-kind", CheckState.Met, $"The {side} anchor has flat sides."),
            AnchorKind.TwoCrossed => new(
                $"{side}-anchor-kind",
                CheckState.Met,
                $"The {side} anchor is two weights crossed."
            ),
            AnchorKind.Round => new(
                $"{side}-anchor-kind",
                CheckState.NotMet,
                $"the {side} anchor is round and rolls: use a flat-sided one, or two crossed."
            ),
            _ => new($"{side}-anchor-kind", CheckState.NotKnown, $"nobody said what the {side} anchor is."),
        };

    private static Check Lifts(string side, Pull pull, double apexM)
    {
        string id = $"{side}-anchor-lifts";
        if (pull.Side.AnchorMassKg is not { } mass)
        {
            return new(id, CheckState.NotKnown, $"the {side} anchor's mass is not known.");
        }

        double weight = mass * Gravity.MetresPerSecondSquared;
        double vertical = pull.VerticalN(apexM) + (2 * pull.VerticalUncertaintyN(apexM));
        double most = BandMargins.VerticalShare.Value * weight;
        bool met = vertical <= most;
        return new(
            id,
            met ? CheckState.Met : CheckState.NotMet,
            $"{(met ? "The" : "the")} {side} band lifts its anchor with up to {vertical:0} N at the apex; half of the anchor's weight is {most:0} N."
        );
    }

    private static Check Slides(string side, Pull pull, double apexM, double friction)
    {
        string id = $"{side}-anchor-slides";
        if (pull.Side.AnchorMassKg is not { } mass)
        {
            return new(id, CheckState.NotKnown, $"the {side} anchor's mass is not known.");
        }

        double length = pull.LengthM(apexM);
        double tension = pull.TensionN(apexM) + (2 * pull.TensionUncertaintyN(apexM));
        double horizontal = tension * pull.Side.AnchorDistanceM / length;
        double vertical = pull.VerticalN(apexM) + (2 * pull.VerticalUncertaintyN(apexM));
        double left = Math.Max((mass * Gravity.MetresPerSecondSquared) - vertical, 0);
        double most = BandMargins.FrictionShare.Value * friction * left;
        bool met = horizontal <= most;
        return new(
            id,
            met ? CheckState.Met : CheckState.NotMet,
            $"{(met ? "The" : "the")} {side} band drags its anchor sideways with up to {horizontal:0} N; half of the friction that is left is {most:0} N (coefficient {friction:0.0#})."
        );
    }

    private static Check Stretch(string side, Pull pull, double apexM)
    {
        double stretch = pull.StretchM(apexM);
        double? known = (pull.Side.GreatestStretchStatedM, pull.Curve.GreatestStretchM) switch
        {
            ({ } stated, _) => stated,
            (null, { } measured) => measured,
            _ => null,
        };
        string id = $"{side}-stretch";
        if (known is not { } most)
        {
            return new(
                id,
                CheckState.NotKnown,
                $"no stretch of the {side} band was measured or stated by its maker, and the apex asks for {100 * stretch:0} cm."
            );
        }

        bool met = stretch <= most + 1e-9;
        return new(
            id,
            met ? CheckState.Met : CheckState.NotMet,
            $"{(met ? "The" : "the")} {side} band is stretched by {100 * stretch:0} cm at the apex; the greatest {(pull.Side.GreatestStretchStatedM is null ? "measured" : "stated by its maker")} is {100 * most:0} cm."
        );
    }
}
