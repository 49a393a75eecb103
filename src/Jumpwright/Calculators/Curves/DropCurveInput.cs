using System.Collections.Immutable;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>Drop jumps from several heights.</summary>
/// <param name="Trials">Single trials, never means: their scatter tells the noise. One device, one method, nearby days.</param>
/// <param name="LimitM">The highest drop that limits allow the athlete, m; nothing above it is proposed or chosen.</param>
/// <param name="ContactCeilingS">The athlete's contact ceiling, s.</param>
public sealed record DropCurveInput(ImmutableArray<DropJumpTrial> Trials, double LimitM, double ContactCeilingS = 0.25)
{
    /// <summary>What is believed of such curves before; the house's.</summary>
    public CurvePrior Prior { get; init; } = CurveNumbers.Drop;

    /// <summary>False leaves the next test unsought: it is the dear part.</summary>
    public bool SeekNext { get; init; } = true;
}
