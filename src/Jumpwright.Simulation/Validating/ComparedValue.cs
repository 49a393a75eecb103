using Jumpwright.Trials;

namespace Jumpwright.Simulation.Validating;

/// <summary>A measured value beside its truth.</summary>
/// <param name="Name">The contract's name.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Value">Measured.</param>
/// <param name="Truth">True.</param>
/// <param name="StandardUncertainty">Stated.</param>
/// <param name="Doubtful">Named as not to be decided from.</param>
public readonly record struct ComparedValue(
    string Name,
    string Unit,
    double Value,
    double Truth,
    double StandardUncertainty,
    bool Doubtful
)
{
    /// <summary>Height wrong by more than this is a failure, m (issue: 1 cm).</summary>
    public const double HeightLimitM = 0.010;

    /// <summary>Contact wrong by more than this is a failure, s (issue: 10 ms).</summary>
    public const double ContactLimitS = 0.010;

    public double Error => Value - Truth;

    public bool Covered => Math.Abs(Error) <= 2 * StandardUncertainty;

    public bool IsSilentFailure =>
        !Doubtful
        && Name switch
        {
            MeasureNames.JumpHeight or MeasureNames.JumpHeightFlightTime or MeasureNames.DropHeight => Math.Abs(Error)
                > HeightLimitM,
            MeasureNames.ContactTime => Math.Abs(Error) > ContactLimitS,
            _ => false,
        };
}
