using System.Collections.Immutable;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>Contact time over drop height: a line where there are two heights, the mean where there is one.</summary>
internal sealed class ContactLine
{
    /// <summary>Trial-to-trial SD of contact to start from, of its mean (house rule), worth four trials.</summary>
    private const double StartingShare = 0.06;
    private const double StartingDegreesOfFreedom = 4;

    private readonly StraightLine? _line;
    private readonly double _mean;
    private readonly double _sd;

    private ContactLine(StraightLine? line, double mean, double sd) => (_line, _mean, _sd) = (line, mean, sd);

    internal static ContactLine Of(ImmutableArray<DropJumpTrial> trials)
    {
        double mean = trials.Average(t => t.ContactS);
        double start = StartingShare * mean;
        if (
            StraightLine
                .Fit(
                    [.. trials.Select(t => t.DropM)],
                    [.. trials.Select(t => t.ContactS)],
                    start,
                    StartingDegreesOfFreedom
                )
                .TryGet(out StraightLine? line, out _)
        )
        {
            return new ContactLine(line, mean, line.ResidualSd);
        }

        double squares = trials.Sum(t => (t.ContactS - mean) * (t.ContactS - mean));
        return new ContactLine(
            null,
            mean,
            Math.Sqrt(
                (squares + (StartingDegreesOfFreedom * start * start)) / (trials.Length - 1 + StartingDegreesOfFreedom)
            ) / Math.Sqrt(trials.Length)
        );
    }

    internal (double Seconds, double Sd) At(double dropM) =>
        _line is null ? (_mean, _sd) : (_line.At(dropM), _line.UncertaintyAt(dropM));

    internal double ProbabilityBelow(double dropM, double ceilingS)
    {
        (double seconds, double sd) = At(dropM);
        return Likelihood.Below(seconds, sd, ceilingS);
    }
}
