using System.Collections.Immutable;
using Jumpwright.Calculators.Curves;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.RunUps;

/// <summary>What one way of taking off makes of the run-up.</summary>
/// <param name="TakeOff">Which.</param>
/// <param name="MeanHeightM">Mean height of the trials, m.</param>
/// <param name="GainM">Over the standing jump, m.</param>
/// <param name="GainUncertaintyM">Its standard uncertainty, m.</param>
/// <param name="ConvertedPct">Gain as a share of ½ v²/g, the run-up's energy as height, %.</param>
/// <param name="BestSpeedMS">Where the curve is highest within what was measured and allowed, m/s.</param>
/// <param name="BestSpeedUncertaintyMS">Its doubt.</param>
/// <param name="GoodFromMS">Range of speeds expected to lose at most 3 %: lower end, m/s.</param>
/// <param name="GoodToMS">Upper end, m/s.</param>
/// <param name="BestHeightM">Height there, m.</param>
/// <param name="BestHeightUncertaintyM">Its doubt.</param>
/// <param name="LeftM">Best of the curve less the mean of the trials, m: what is left on the table.</param>
/// <param name="MeanContactS">Mean take-off contact and its standard uncertainty, s, or null.</param>
/// <param name="LastStepM">Length of the last step and its standard uncertainty, m, or null.</param>
/// <param name="LastStepRatio">Last step over the one before and its standard uncertainty, or null.</param>
/// <param name="Curve">For drawing.</param>
public sealed record RunUpCurve(
    TakeOffFoot TakeOff,
    double MeanHeightM,
    double GainM,
    double GainUncertaintyM,
    double ConvertedPct,
    double BestSpeedMS,
    double BestSpeedUncertaintyMS,
    double GoodFromMS,
    double GoodToMS,
    double BestHeightM,
    double BestHeightUncertaintyM,
    double LeftM,
    (double Mean, double U)? MeanContactS,
    (double Mean, double U)? LastStepM,
    (double Mean, double U)? LastStepRatio,
    ImmutableArray<CurveSample> Curve
);
