namespace Jumpwright.Calculators.RunUps;

/// <summary>One approach jump.</summary>
/// <param name="TakeOff">Off two feet or off one.</param>
/// <param name="SpeedMS">Run-up speed before the last contact, m/s.</param>
/// <param name="HeightM">Height out, m; one way of measuring only (plate, reach or flight time).</param>
/// <param name="ContactS">Take-off contact, s; null when not measured.</param>
/// <param name="LastStepM">Length of the last step, m; null when not measured.</param>
/// <param name="StepBeforeM">Length of the step before it, m; null when not measured.</param>
public sealed record ApproachTrial(
    TakeOffFoot TakeOff,
    double SpeedMS,
    double HeightM,
    double? ContactS = null,
    double? LastStepM = null,
    double? StepBeforeM = null
);
