using Jumpwright.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Numbers with their doubt, and days, as they stand in a sentence.</summary>
internal static class Spoken
{
    internal static Sentence Cm(double value, double doubt) => $"{new DoubtedLength(value, doubt)}";

    internal static Sentence Ms(double value, double doubt) => Doubted.Milliseconds(value, doubt);

    internal static Sentence Percent(double value, double doubt) => Doubted.Percent(value, doubt);

    internal static Sentence Of(Measure measure) =>
        measure.Unit == Unit.Metre ? Cm(measure.Value, measure.StandardUncertainty)
        : measure.Unit == Unit.Second ? Ms(measure.Value, measure.StandardUncertainty)
        : measure.Unit == Unit.Percent ? Percent(measure.Value, measure.StandardUncertainty)
        : Sentence.Of($"{Doubted.Number(measure.Value, measure.StandardUncertainty)} {measure.Unit}");

    internal static Sentence Device(Device? device) =>
        device switch
        {
            Athletes.Device.ForcePlate => $"one plate",
            Athletes.Device.TwoForcePlates => $"two plates",
            Athletes.Device.MatOrGate => $"mat",
            Athletes.Device.Camera => $"camera",
            _ => $"by hand",
        };

    internal static Sentence Chance(double probability) =>
        probability switch
        {
            >= LikelyWords.AlmostCertain => $"almost certain",
            >= LikelyWords.VeryLikely => $"very likely",
            >= LikelyWords.Plain => $"likely",
            > 1 - LikelyWords.Plain => $"not settled",
            > 1 - LikelyWords.VeryLikely => $"unlikely",
            _ => $"very unlikely",
        };
}
