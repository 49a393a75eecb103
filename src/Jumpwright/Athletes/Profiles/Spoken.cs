using Jumpwright.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Numbers with their doubt, and days, as they stand in a sentence.</summary>
internal static class Spoken
{
    internal static Sentence Cm(double value, double doubt) =>
        $"{new Length(value):0.0 (cm)} ± {new Length(doubt):0.0 cm}";

    internal static Sentence Ms(double value, double doubt) => $"{1000 * value:0} ± {1000 * doubt:0} ms";

    internal static Sentence Percent(double value, double doubt) => $"{value:0} ± {doubt:0} %";

    internal static Sentence Of(Measure measure) =>
        measure.Unit == Unit.Metre ? Cm(measure.Value, measure.StandardUncertainty)
        : measure.Unit == Unit.Second ? Ms(measure.Value, measure.StandardUncertainty)
        : measure.Unit == Unit.Percent ? Percent(measure.Value, measure.StandardUncertainty)
        : Sentence.Of($"{measure.Value:0.00} ± {measure.StandardUncertainty:0.00} {measure.Unit}");

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
            >= 0.99 => $"almost certain",
            >= 0.90 => $"very likely",
            >= 0.75 => $"likely",
            > 0.25 => $"not settled",
            > 0.10 => $"unlikely",
            _ => $"very unlikely",
        };
}
