using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Gains;

/// <summary>What moving one quality would typically bring.</summary>
/// <param name="Quality">Which.</param>
/// <param name="Centimetres">Typical gain, cm; null where no effect on that outcome is published.</param>
/// <param name="Low">Lower end of the 95 % interval, cm.</param>
/// <param name="High">Upper end, cm.</param>
/// <param name="LimitsThem">Probability that this quality limits the athlete; null when not tested.</param>
/// <param name="Sentence">With source, or "no published effect" in words.</param>
public sealed record Gain(
    Quality Quality,
    double? Centimetres,
    double? Low,
    double? High,
    double? LimitsThem,
    Sentence Sentence
)
{
    /// <summary>False where the exercise that the effect was published of is closed to the athlete: nothing of it can be had now.</summary>
    public bool IsOpen { get; init; } = true;
}
