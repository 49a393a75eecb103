using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime.Text;

namespace Jumpwright.App.Api;

/// <summary>
/// An athlete's measures as a FHIR R4 Bundle of Observations (hl7.org/fhir/R4/observation.html) with units of UCUM. Codes are
/// our own: there are no standard codes for most of what a jump gives. The standard uncertainty stands as a component.
/// </summary>
internal static class FhirObservations
{
    private const string Codes = "urn:jumpwright:measure";
    private const string Ucum = "http://unitsofmeasure.org";

    /// <summary>Our units are written as UCUM writes them, but for the two that it names otherwise.</summary>
    private static readonly Dictionary<string, string> UcumOf = new(StringComparer.Ordinal)
    {
        ["1"] = "1",
        ["m"] = "m",
        ["s"] = "s",
        ["kg"] = "kg",
        ["N"] = "N",
        ["W"] = "W",
        ["J"] = "J",
        ["m/s"] = "m/s",
        ["N/m"] = "N/m",
        ["N/s"] = "N/s",
        ["N.s"] = "N.s",
        ["%"] = "%",
        ["°"] = "deg",
    };

    public static object Bundle(AthleteLeaf leaf) =>
        new
        {
            resourceType = "Bundle",
            type = "collection",
            entry = leaf
                .History.Trials.SelectMany(t => t.Trial.Measures.Select(m => new { resource = Observation(t, m) }))
                .ToArray(),
        };

    private static object Observation(MeasuredTrial trial, Measure measure)
    {
        bool doubtful = trial.Trial.Doubtful.Contains(measure.Name);
        return new
        {
            resourceType = "Observation",
            id = $"{trial.Sha256[..24]}-{trial.Trial.Number}-{Short(measure.Name)}",
            status = doubtful ? "preliminary" : "final",
            code = Code(measure.Name, MeasureWords.Name(measure.Name)),
            subject = new { reference = $"Patient/{trial.AthleteId}" },
            effectiveDateTime = LocalDatePattern.Iso.Format(trial.Date),
            valueQuantity = Quantity(measure.Value, measure.Unit),
            method = new { text = measure.Method },
            device = new { display = Words.Of(trial.Device) },
            note = doubtful ? new[] { new { text = "Doubtful: not to be decided from." } } : null,
            component = new[]
            {
                new
                {
                    code = Code("standard_uncertainty", "standard uncertainty"),
                    valueQuantity = Quantity(measure.StandardUncertainty, measure.Unit),
                },
            },
        };
    }

    private static object Code(string code, string text) =>
        new
        {
            coding = new[]
            {
                new
                {
                    system = Codes,
                    code,
                    display = text,
                },
            },
            text,
        };

    private static object Quantity(double value, Unit unit) =>
        new
        {
            value,
            unit = unit.Symbol,
            system = Ucum,
            code = UcumOf.GetValueOrDefault(unit.Symbol, "1"),
        };

    /// <summary>An id of FHIR is at most 64 letters, digits, hyphens and points.</summary>
    private static string Short(string name)
    {
        string plain = name.Replace('_', '-');
        return plain.Length <= 35 ? plain : plain[..35].TrimEnd('-');
    }
}
