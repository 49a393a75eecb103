using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Bands;

/// <summary>The conditions of a band set-up, each judged at the apex with tension + 2u. Unknown closes.</summary>
internal static class BandChecks
{
    /// <summary>No band that is jumped against pulls less at its longest, N, nor less for each metre of its stretch, N/m (house rules; half of a light band's).</summary>
    private const double LeastPullN = 15;

    private const double LeastPullNM = 60;

    internal static IEnumerable<Check> Of(BandPlace side, Pull pull, double apexM, double friction)
    {
        yield return Kind(side, pull.Side.Anchor);
        yield return Plausible(side, pull, apexM);
        yield return Lifts(side, pull, apexM);
        yield return Slides(side, pull, apexM, friction);
        yield return Stretch(side, pull, apexM);
        yield return pull.Side.WearChecked switch
        {
            true => new($"{side.Id}-wear", CheckState.Met, $"The {side.Said} band was looked over before this use."),
            false => new(
                $"{side.Id}-wear",
                CheckState.NotMet,
                $"the {side.Said} band was not looked over for nicks, cracks and pale spots before this use."
            ),
            null => new(
                $"{side.Id}-wear",
                CheckState.NotKnown,
                $"nobody said whether the {side.Said} band was looked over for nicks, cracks and pale spots before this use."
            ),
        };
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
            Within(
                alike,
                $"Left and right differ by {difference:0} % at the apex ({l:0} and {r:0} N; at most {BandMargins.LeftRight.Value:0} %)."
            )
        );
    }

    private static Check Kind(BandPlace side, AnchorKind anchor)
    {
        string id = $"{side.Id}-anchor-kind";
        return anchor switch
        {
            AnchorKind.FlatSided => new(id, CheckState.Met, $"The {side.Said} anchor has flat sides."),
            AnchorKind.TwoCrossed => new(id, CheckState.Met, $"The {side.Said} anchor is two weights crossed."),
            AnchorKind.Round => new(
                id,
                CheckState.NotMet,
                $"the {side.Said} anchor is round and rolls: use a flat-sided one, or two crossed."
            ),
            _ => new(id, CheckState.NotKnown, $"nobody said what the {side.Said} anchor is."),
        };
    }

    /// <summary>A condition that is met stands by itself; one that is not is told within a sentence.</summary>
    private static Sentence Within(bool met, Sentence sentence) => met ? sentence : Sentence.Of($"{sentence:small}");

    /// <summary>Hand scales read kilograms: a pull that small for its stretch is more likely a wrong unit than a band, and holds no anchor down on paper.</summary>
    private static Check Plausible(BandPlace side, Pull pull, double apexM)
    {
        string id = $"{side.Id}-pull";
        double tension = pull.TensionN(apexM);
        bool plausible = tension >= LeastPullN && tension >= LeastPullNM * pull.StretchM(apexM);
        return plausible
            ? new(id, CheckState.Met, $"The {side.Said} band pulls with {tension:0} N at the apex, as bands do.")
            : new(
                id,
                CheckState.NotKnown,
                $"the {side.Said} band would pull with only {tension:0} N at the apex: read the scale again; kilograms are newtons only times 9.81, and lengths are in metres."
            );
    }

    private static Check Lifts(BandPlace side, Pull pull, double apexM)
    {
        string id = $"{side.Id}-anchor-lifts";
        if (pull.Side.AnchorMassKg is not { } mass)
        {
            return new(id, CheckState.NotKnown, $"the {side.Said} anchor's mass is not known.");
        }

        double weight = mass * Gravity.MetresPerSecondSquared;
        double vertical = pull.VerticalN(apexM) + (2 * pull.VerticalUncertaintyN(apexM));
        double most = BandMargins.VerticalShare.Value * weight;
        bool met = vertical <= most;
        return new(
            id,
            met ? CheckState.Met : CheckState.NotMet,
            met
                ? Sentence.Of(
                    $"The {side.Said} anchor stays down: its band pulls it up with at most {vertical:0} N at the apex, and half of its weight is {most:0} N."
                )
                : Sentence.Of(
                    $"the {side.Said} anchor may lift: its band pulls it up with up to {vertical:0} N at the apex, and half of its weight is only {most:0} N."
                )
        );
    }

    private static Check Slides(BandPlace side, Pull pull, double apexM, double friction)
    {
        string id = $"{side.Id}-anchor-slides";
        if (pull.Side.AnchorMassKg is not { } mass)
        {
            return new(id, CheckState.NotKnown, $"the {side.Said} anchor's mass is not known.");
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
            met
                ? Sentence.Of(
                    $"The {side.Said} anchor stays where it is: its band pulls it sideways with at most {horizontal:0} N, and half of the friction that is left is {most:0} N (coefficient {friction:0.0#})."
                )
                : Sentence.Of(
                    $"the {side.Said} anchor may slide: its band pulls it sideways with up to {horizontal:0} N, and half of the friction that is left is only {most:0} N (coefficient {friction:0.0#})."
                )
        );
    }

    private static Check Stretch(BandPlace side, Pull pull, double apexM)
    {
        double stretch = pull.StretchM(apexM);
        double? known = (pull.Side.GreatestStretchStatedM, pull.Curve.GreatestStretchM) switch
        {
            ({ } stated, _) => stated,
            (null, { } measured) => measured,
            _ => null,
        };
        string id = $"{side.Id}-stretch";
        if (known is not { } most)
        {
            return new(
                id,
                CheckState.NotKnown,
                $"no stretch of the {side.Said} band was measured or stated by its maker, and the apex asks for {new Length(stretch):0 cm}."
            );
        }

        bool met = stretch <= most + 1e-9;
        return new(
            id,
            met ? CheckState.Met : CheckState.NotMet,
            Within(
                met,
                pull.Side.GreatestStretchStatedM is null
                    ? Sentence.Of(
                        $"The {side.Said} band is stretched by {new Length(stretch):0 cm} at the apex; the greatest measured is {new Length(most):0 cm}."
                    )
                    : Sentence.Of(
                        $"The {side.Said} band is stretched by {new Length(stretch):0 cm} at the apex; the greatest stated by its maker is {new Length(most):0 cm}."
                    )
            )
        );
    }
}
