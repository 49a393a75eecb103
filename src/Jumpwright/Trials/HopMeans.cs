using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Means over the hops that count, for any device.</summary>
internal static class HopMeans
{
    /// <summary>Timed no finer than this, s, the choice of the best hops is partly a choice of errors.</summary>
    private const double CoarseS = 0.001;

    /// <summary>By as much the mean of hops chosen so is less sure (house estimate, held by validation).</summary>
    private const double ByLuck = 1.7;

    /// <summary>Adds counts and the means of times, flight-time height, index and time-model stiffness.</summary>
    /// <param name="list">Receives them.</param>
    /// <param name="hops">Every complete contact with its flight.</param>
    /// <param name="doubts">Standard uncertainty of each contact and flight, s.</param>
    /// <param name="timing">Method of the times.</param>
    /// <param name="massKg">Mass and its doubt, kg; null where none is known.</param>
    /// <returns>Indices of the hops that count.</returns>
    public static ImmutableArray<int> Add(
        MeasureList list,
        IReadOnlyList<HopContact> hops,
        IReadOnlyList<(double ContactU, double FlightU)> doubts,
        string timing,
        (double Kg, double U)? massKg
    )
    {
        ImmutableArray<int> counted = Hops.Counted(hops);
        list.Add(MeasureNames.HopsFound, hops.Count, Unit.One, 0, "complete contacts with their flights");
        list.Add(
            MeasureNames.HopsCounted,
            counted.Length,
            Unit.One,
            0,
            "best five by index, first left out, contact below 0.25 s"
        );
        if (counted.Length == 0)
        {
            list.Warn(Cautions.NoHopCounts);
            return counted;
        }

        if (counted.Length < Hops.Best)
        {
            list.Warn(Cautions.FewHops(counted.Length));
        }

        if (HangsOnOne(hops, doubts, counted))
        {
            list.Doubt(
                Cautions.HopAtTheEdge,
                MeasureNames.ContactTime,
                MeasureNames.FlightTime,
                MeasureNames.JumpHeightFlightTime,
                MeasureNames.ReactiveStrengthIndex,
                MeasureNames.VerticalStiffness,
                MeasureNames.VerticalStiffnessTimeModel
            );
        }

        // Errors of single hops are independent, so their mean is surer. But the best are chosen by the very values that err:
        // where an interval is timed coarsely, luck is chosen too.
        double chosen = doubts.Max(d => d.ContactU) > CoarseS && counted.Length < hops.Count ? ByLuck : 1;
        List<(int Instead, double Likely)> swaps = Swaps(hops, doubts, counted);
        const double g = Gravity.MetresPerSecondSquared;
        Add(MeasureNames.ContactTime, Unit.Second, timing, i => (hops[i].ContactS, doubts[i].ContactU));
        Add(MeasureNames.FlightTime, Unit.Second, timing, i => (hops[i].FlightS, doubts[i].FlightU));
        Add(
            MeasureNames.JumpHeightFlightTime,
            Unit.Metre,
            PushMeasures.ByFlightTime,
            i => (Flight.HeightFromTimeM(hops[i].FlightS), g * hops[i].FlightS / 4 * doubts[i].FlightU)
        );
        Add(
            MeasureNames.ReactiveStrengthIndex,
            Unit.MetrePerSecond,
            PushMeasures.ByFlightTime,
            i => (hops[i].ReactiveStrengthIndex, IndexUncertainty(hops[i], doubts[i]))
        );
        if (massKg is var (kg, u))
        {
            Add(
                MeasureNames.VerticalStiffnessTimeModel,
                Unit.NewtonPerMetre,
                "half-sine from contact and flight time",
                i => TimeModel.Of(kg, 0, hops[i].ContactS, doubts[i].ContactU, hops[i].FlightS, doubts[i].FlightU),
                u / kg
            );
        }

        return counted;

        // What all share (the mass) is not surer in the mean.
        void Add(string name, Unit unit, string method, Func<int, (double Value, double U)> of, double sharedPart = 0)
        {
            double sum = 0;
            double squares = 0;
            foreach (int i in counted)
            {
                (double value, double doubt) = of(i);
                sum += value;
                squares += doubt * doubt;
            }

            double last = of(counted[^1]).Value;
            double swapped = swaps.Sum(s => s.Likely * Math.Pow(of(s.Instead).Value - last, 2));

            double mean = sum / counted.Length;
            list.Add(
                name,
                mean,
                unit,
                PushMeasures.Quadrature(
                    Math.Sqrt((chosen * chosen * squares) + swapped) / counted.Length,
                    mean * sharedPart
                ),
                method
            );
        }
    }

    /// <summary>
    /// The hops that would count instead of the last that does, were the indices not a little off, and how likely that is: two hops
    /// of one index may differ much in contact and flight.
    /// </summary>
    private static List<(int Instead, double Likely)> Swaps(
        IReadOnlyList<HopContact> hops,
        IReadOnlyList<(double ContactU, double FlightU)> doubts,
        ImmutableArray<int> counted
    )
    {
        List<(int, double)> swaps = [];
        int last = counted[^1];
        for (int i = 1; i < hops.Count; i++)
        {
            if (hops[i].ContactS < Hops.LongestContactS && !counted.Contains(i))
            {
                double u = PushMeasures.Quadrature(
                    IndexUncertainty(hops[i], doubts[i]),
                    IndexUncertainty(hops[last], doubts[last])
                );
                double less = hops[last].ReactiveStrengthIndex - hops[i].ReactiveStrengthIndex;
                swaps.Add((i, NormalTail.Above(less / Math.Max(u, 1e-12))));
            }
        }

        return swaps;
    }

    private static double IndexUncertainty(HopContact hop, (double ContactU, double FlightU) doubt) =>
        ReboundIndex.UncertaintyOf(hop, doubt.ContactU, doubt.FlightU);

    /// <summary>Whether a hop counts or not by less than its contact time is sure.</summary>
    private static bool HangsOnOne(
        IReadOnlyList<HopContact> hops,
        IReadOnlyList<(double ContactU, double FlightU)> doubts,
        ImmutableArray<int> counted
    )
    {
        double least = counted.Length < Hops.Best ? 0 : counted.Min(i => hops[i].ReactiveStrengthIndex);
        for (int i = 1; i < hops.Count; i++)
        {
            if (
                Math.Abs(hops[i].ContactS - Hops.LongestContactS) < 2 * doubts[i].ContactU
                && hops[i].ReactiveStrengthIndex >= least
            )
            {
                return true;
            }
        }

        return false;
    }
}
