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

    /// <summary>The bundle round its entries.</summary>
    public static object BundleOf<T>(T[] entries) =>
        new
        {
            resourceType = "Bundle",
            type = "collection",
            entry = entries,
        };

    /// <summary>The beginning of the ids of a trial's observations.</summary>
    public static string IdOf(MeasuredTrial trial) => $"{trial.Sha256[..24]}-{trial.Trial.Number}-";

    public static string SubjectOf(MeasuredTrial trial) => $"Patient/{trial.AthleteId}";

    public static string DayOf(MeasuredTrial trial) => LocalDatePattern.Iso.Format(trial.Date);

    /// <summary>One measure of one trial.</summary>
    public static object Entry(MeasuredTrial trial, Measure measure) =>
        Entry(
            measure,
            IdOf(trial),
            SubjectOf(trial),
            DayOf(trial),
            trial.Device,
            trial.Trial.Doubtful.Contains(measure.Name)
        );

    /// <summary>The same by what it says.</summary>
    public static object Entry(Measure measure, string id, string subject, string day, Device device, bool doubtful) =>
        new
        {
            resource = new
            {
                resourceType = "Observation",
                id = id + Short(measure.Name),
                status = doubtful ? "preliminary" : "final",
                code = Code(measure.Name, MeasureWords.Name(measure.Name)),
                subject = new { reference = subject },
                effectiveDateTime = day,
                valueQuantity = Quantity(measure.Value, measure.Unit),
                method = new { text = measure.Method },
                device = new { display = Words.Of(device) },
                note = doubtful ? new[] { new { text = "Doubtful: not to be decided from." } } : null,
                component = new[]
                {
                    new
                    {
                        code = Code("standard_uncertainty", "standard uncertainty"),
                        valueQuantity = Quantity(measure.StandardUncertainty, measure.Unit),
                    },
                },
            },
        };

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
