using System.Text.Json.Serialization;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>One measure under its contract name.</summary>
internal sealed record MeasureJson(
    [property: JsonPropertyName("value")] double Value,
    [property: JsonPropertyName("unit")] string Unit,
    [property: JsonPropertyName("standard_uncertainty")] double StandardUncertainty,
    [property: JsonPropertyName("method")] string Method
)
{
    public static MeasureJson Of(Measure measure) =>
        new(measure.Value, measure.Unit.Symbol, measure.StandardUncertainty, measure.Method);
}
