using System.Globalization;
using System.Text.RegularExpressions;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Trials;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>
/// How measures are said to people: the trade's name, centimetres (or inches) and milliseconds instead of SI, as many digits as the
/// doubt leaves sense in, and always the ±, which is one standard uncertainty.
/// </summary>
internal static partial class MeasureWords
{
    private static readonly Dictionary<string, (string Name, double Scale, string Unit)> Known = new(
        StringComparer.Ordinal
    )
    {
        [MeasureNames.BodyWeight] = ("body weight", 1, "N"),
        [MeasureNames.SystemWeight] = ("weight on the plate", 1, "N"),
        [MeasureNames.JumpHeight] = ("jump height", 100, "cm"),
        [MeasureNames.JumpHeightFlightTime] = ("jump height by flight time", 100, "cm"),
        [MeasureNames.TakeOffVelocity] = ("take-off velocity", 1, "m/s"),
        [MeasureNames.FlightTime] = ("flight time", 1000, "ms"),
        [MeasureNames.ContactTime] = ("contact time", 1000, "ms"),
        [MeasureNames.DropHeight] = ("actual drop height", 100, "cm"),
        [MeasureNames.ReactiveStrengthIndex] = ("reactive strength index", 1, "m/s"),
        [MeasureNames.ReactiveStrengthIndexModified] = ("modified reactive strength index", 1, "m/s"),
        [MeasureNames.TimeToTakeOff] = ("time to take-off", 1000, "ms"),
        [MeasureNames.CountermovementDepth] = ("countermovement depth", 100, "cm"),
        [MeasureNames.UnwantedDip] = ("unwanted dip", 1, "% of weight"),
        [MeasureNames.PeakPropulsivePower] = ("peak propulsive power", 1, "W"),
        [MeasureNames.MeanPropulsivePower] = ("mean propulsive power", 1, "W"),
        [MeasureNames.PeakForce] = ("peak force", 1, "N"),
        [MeasureNames.PeakLandingForce] = ("peak landing force", 1, "N"),
        [MeasureNames.PeakLoadingRate] = ("peak loading rate", 0.001, "kN/s"),
        [MeasureNames.LandingNetImpulse] = ("net impulse of the landing", 1, "N s"),
        [MeasureNames.BrakingDuration] = ("duration of braking", 1000, "ms"),
        [MeasureNames.PropulsionDuration] = ("duration of the push", 1000, "ms"),
        [MeasureNames.VerticalStiffness] = ("vertical stiffness", 0.001, "kN/m"),
        [MeasureNames.VerticalStiffnessTimeModel] = ("vertical stiffness by times", 0.001, "kN/m"),
        [MeasureNames.TimeToStabilisation] = ("time to stabilisation", 1000, "ms"),
        [MeasureNames.AsymmetryPropulsiveImpulse] = ("left−right, propulsive impulse", 1, "%"),
        [MeasureNames.AsymmetryBrakingImpulse] = ("left−right, braking impulse", 1, "%"),
        [MeasureNames.AsymmetryLandingImpulse] = ("left−right, landing impulse", 1, "%"),
        [MeasureNames.HopsFound] = ("hops found", 1, ""),
        [MeasureNames.HopsCounted] = ("hops counted", 1, ""),
    };

    /// <summary>Results of calculators whose names say too little without their unit.</summary>
    private static readonly Dictionary<string, string> Other = new(StringComparer.Ordinal)
    {
        ["chance_within_3_pct"] = "chance of lying within 3 %",
        ["start_height_for_90_m"] = "seat for hips at 90°",
        ["load_from_kg"] = "load, from",
        ["load_to_kg"] = "load, to",
        ["peak_after_one_load_d"] = "best day after one load",
    };

    private static readonly HashSet<string> Units = new(StringComparer.Ordinal)
    {
        "m",
        "s",
        "d",
        "kg",
        "N",
        "J",
        "W",
        "BW",
        "deg",
        "pct",
    };

    /// <summary>What ± means on every screen; said once wherever numbers stand.</summary>
    public const string PlusMinus = "± is one standard uncertainty.";

    /// <summary>Whether it compares left and right, so that its sign says which.</summary>
    public static bool IsOfSides(Measure measure) =>
        measure.Name
            is MeasureNames.AsymmetryPropulsiveImpulse
                or MeasureNames.AsymmetryBrakingImpulse
                or MeasureNames.AsymmetryLandingImpulse;

    /// <summary>The trade's name of a measure.</summary>
    public static string Name(string contractName) =>
        Known.TryGetValue(contractName, out (string Name, double, string) known) ? known.Name : Plain(contractName);

    /// <summary>Value, ± and unit, for example <c>37.1 ± 0.3 cm</c>.</summary>
    public static string Value(Measure measure)
    {
        (double scale, string unit) = Scale(measure);
        double value = measure.Value * scale;
        double doubt = measure.StandardUncertainty * scale;
        int digits = Digits.Of(doubt, value);
        string format = "F" + digits;
        string number = Numerals.Write(Math.Round(value, digits) + 0.0, format, Speech.Now.Language).Replace('-', '−');
        string said = doubt > 0 ? $"{number} ± {Numerals.Write(doubt, format, Speech.Now.Language)}" : number;
        return unit.Length == 0 ? said : said + " " + UnitWords.Word(unit);
    }

    /// <summary>Its doubt in words.</summary>
    public static string Doubt(Measure measure)
    {
        if (measure.StandardUncertainty <= 0)
        {
            return T["doubt.none"];
        }

        (double scale, string unit) = Scale(measure);
        double doubt = measure.StandardUncertainty * scale;
        string number = Numerals.Write(
            doubt,
            doubt < 0.001 ? "G2" : "F" + Digits.Of(doubt, doubt),
            Speech.Now.Language
        );
        string said = $"{number} {UnitWords.Word(unit)}".TrimEnd();
        // A difference near nothing is no measure of its own doubt.
        return measure.StandardUncertainty >= Math.Abs(measure.Value)
            ? T["doubt.one", said]
            : T[
                "doubt.part",
                said,
                Numerals.Write(100 * Math.Abs(measure.StandardUncertainty / measure.Value), "0.0", Speech.Now.Language)
            ];
    }

    /// <summary>How the value was got, in plain English; its own words where the text book knows none.</summary>
    public static string Method(Measure measure) =>
        MethodIn("en", measure.Method)
        ?? NumberAndUnit()
            .Replace(
                measure.Method.Replace('-', ' '),
                m =>
                    $"{m.Groups["number"].Value} {m.Groups["unit"].Value.Replace("sd", "SD", StringComparison.Ordinal)}"
            );

    /// <summary>The same in the language of the page; English, which says so, where the text book knows no such method.</summary>
    public static Piece MethodSaid(Measure measure) =>
        MethodIn(Speech.Now.Language, measure.Method) is { } words ? new(words) : new(Method(measure), IsEnglish: true);

    /// <summary>A method in that language; null where the text book knows none of that name.</summary>
    public static string? MethodIn(string language, string method)
    {
        string named = NotOfAKey().Replace(Number().Replace(method, "n"), "-").ToLowerInvariant();
        return TextBook.Of(language, $"method.{named}") is { } words
            ? string.Format(
                CultureInfo.InvariantCulture,
                words,
                [.. Number().Matches(method).Select(n => Numerals.Write(n.Value, language))]
            )
            : null;
    }

    [GeneratedRegex("[0-9]+(?:\\.[0-9]+)?")]
    private static partial Regex Number();

    [GeneratedRegex("[^A-Za-z0-9]+")]
    private static partial Regex NotOfAKey();

    [GeneratedRegex(@"\b(?<number>[0-9]+)(?<unit>sd|ms)\b", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NumberAndUnit();

    /// <summary>A body mass or a load, for example <c>66 kg</c> or <c>145.5 lb</c>.</summary>
    public static string Mass(double kilograms) =>
        Speech.Now.Units == UnitSystem.InchPound
            ? $"{ItemWords.Number(Math.Round(Customary.PoundsOf(kilograms), 1))} lb"
            : $"{ItemWords.Number(kilograms)} kg";

    /// <summary>A name whose unit stands beside the value: <c>energy_J_kg</c> is an energy a kilogram.</summary>
    private static string Plain(string contractName)
    {
        if (Other.TryGetValue(contractName, out string? words))
        {
            return words;
        }

        string[] parts = contractName.Split('_');
        int named = parts.Length;
        while (named > 1 && Units.Contains(parts[named - 1]))
        {
            named--;
        }

        string name = string.Join(' ', parts.Take(named));
        return parts.Length - named > 1 && parts[^1] == "kg" ? name + ", a kilogram" : name;
    }

    private static (double Scale, string Unit) Scale(Measure measure) =>
        (Metric(measure), Speech.Now.Units) switch
        {
            ((var scale, "cm"), UnitSystem.InchPound) => (scale / 100 / Customary.MetresPerInch, "in"),
            ((var scale, "m"), UnitSystem.InchPound) => (scale / Customary.MetresPerInch, "in"),
            ((var scale, "kg"), UnitSystem.InchPound) => (scale / Customary.KilogramsPerPound, "lb"),
            (var metric, _) => metric,
        };

    private static (double Scale, string Unit) Metric(Measure measure) =>
        Known.TryGetValue(measure.Name, out (string, double Scale, string Unit) known) ? (known.Scale, known.Unit)
        // Lengths of tests by hand as the sentences have them.
        : measure.Unit == Unit.Metre && FieldTest.Find(measure.Name) is not null ? (100, "cm")
        : (1, measure.Unit == Unit.One ? "" : measure.Unit.Symbol);
}
