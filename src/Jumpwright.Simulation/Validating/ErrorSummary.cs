namespace Jumpwright.Simulation.Validating;

/// <summary>Errors of one measure over a group of recordings; doubtful values stand apart.</summary>
/// <param name="Name">The contract's name.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Count">Values not named doubtful.</param>
/// <param name="Doubtful">Values named doubtful.</param>
/// <param name="Bias">Mean error.</param>
/// <param name="StandardDeviation">Of the errors (n − 1).</param>
/// <param name="Covered">How many lay within ±2 stated standard uncertainties.</param>
/// <param name="MedianUncertainty">Median stated standard uncertainty.</param>
/// <param name="Worst">Greatest absolute error.</param>
public sealed record ErrorSummary(
    string Name,
    string Unit,
    int Count,
    int Doubtful,
    double Bias,
    double StandardDeviation,
    int Covered,
    double MedianUncertainty,
    double Worst
)
{
    /// <summary>Lower 95 % limit: bias − 1.96 SD.</summary>
    public double LowerLimit => Bias - (1.96 * StandardDeviation);

    /// <summary>Upper 95 % limit: bias + 1.96 SD.</summary>
    public double UpperLimit => Bias + (1.96 * StandardDeviation);

    /// <summary>The larger of the two in absolute value, as the contract states 95 % limits.</summary>
    public double Limit => Math.Max(Math.Abs(LowerLimit), Math.Abs(UpperLimit));

    /// <summary>Part of the values that ±2u held.</summary>
    public double Coverage => Count == 0 ? double.NaN : (double)Covered / Count;

    /// <summary>95 % interval of the coverage (Wilson 1927).</summary>
    public (double Low, double High) CoverageInterval()
    {
        const double z = 1.959964;
        double n = Count;
        double p = Coverage;
        double middle = (p + (z * z / (2 * n))) / (1 + (z * z / n));
        double half = z / (1 + (z * z / n)) * Math.Sqrt((p * (1 - p) / n) + (z * z / (4 * n * n)));
        return (middle - half, middle + half);
    }

    /// <summary>One summary for each name, in the order of the names' first appearance in <paramref name="order"/>.</summary>
    public static IReadOnlyList<ErrorSummary> Of(IEnumerable<CaseResult> results, IReadOnlyList<string> order)
    {
        ILookup<string, ComparedValue> byName = results.SelectMany(r => r.Values).ToLookup(v => v.Name);
        List<ErrorSummary> summaries = [];
        foreach (string name in order.Where(byName.Contains))
        {
            ComparedValue[] good = [.. byName[name].Where(v => !v.Doubtful)];
            int doubtful = byName[name].Count() - good.Length;
            string unit = byName[name].First().Unit;
            if (good.Length < 2)
            {
                summaries.Add(
                    new(name, unit, good.Length, doubtful, double.NaN, double.NaN, 0, double.NaN, double.NaN)
                );
                continue;
            }

            double bias = good.Average(v => v.Error);
            double variance = good.Sum(v => (v.Error - bias) * (v.Error - bias)) / (good.Length - 1);
            double[] u = [.. good.Select(v => v.StandardUncertainty).Order()];
            summaries.Add(
                new(
                    name,
                    unit,
                    good.Length,
                    doubtful,
                    bias,
                    Math.Sqrt(variance),
                    good.Count(v => v.Covered),
                    (u[(u.Length - 1) / 2] + u[u.Length / 2]) / 2,
                    good.Max(v => Math.Abs(v.Error))
                )
            );
        }

        return summaries;
    }
}
