namespace Jumpwright.Calculators.Bands;

/// <summary>A jump against two bands that pull down, one at each side.</summary>
/// <param name="Left">Left band.</param>
/// <param name="Right">Right band.</param>
/// <param name="AttachmentStandingM">Height above the floor at which the bands meet the athlete in standing, m.</param>
/// <param name="DipM">How far the attachment falls in the dip, m.</param>
/// <param name="JumpHeightM">Mean height of the athlete's jumps without band, m.</param>
/// <param name="JumpHeightSdM">Their SD, m: the highest to be expected is mean + 2 SD.</param>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="ScaleUncertaintyN">Standard uncertainty of one scale reading, N.</param>
public sealed record BandJumpInput(
    BandSide Left,
    BandSide Right,
    double AttachmentStandingM,
    double DipM,
    double JumpHeightM,
    double JumpHeightSdM,
    double BodyMassKg,
    double ScaleUncertaintyN = 3
)
{
    /// <summary>Coefficient of friction that anchors are counted with; the house's low one.</summary>
    public double Friction { get; init; } = BandMargins.Friction.Value;
}
