namespace Jumpwright.Calculators.Deciding;

/// <summary>A decision near its threshold.</summary>
/// <param name="Value">Mean of the trials so far.</param>
/// <param name="Threshold">What it is held against, same unit.</param>
/// <param name="Trials">Trials so far.</param>
/// <param name="TrialSd">SD from trial to trial, same unit.</param>
/// <param name="SharedSd">Doubt that more trials of that day don't lessen (device, day), same unit.</param>
/// <param name="Wished">Confidence wished, for example 0.9.</param>
/// <param name="Unit">Unit, for the sentence.</param>
public sealed record MoreTrialsInput(
    double Value,
    double Threshold,
    int Trials,
    double TrialSd,
    double SharedSd = 0,
    double Wished = 0.9,
    string Unit = ""
);
