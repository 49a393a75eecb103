using System.Globalization;
using Jumpwright.Dosing;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>A planned item in the shorthand of a coach's sheet.</summary>
internal static class ItemWords
{
    /// <summary>For example <c>3 × 5 each leg, 30 cm</c>.</summary>
    public static string Dose(PlannedItem item)
    {
        Dose dose = item.Dose;
        var said = new List<string> { $"{item.Sets} × {dose.Reps}{Limb(dose.Limb)}" };
        if (dose.DropHeightM is { } drop)
        {
            said.Add($"from {Height(drop)}");
        }

        if (dose.BoxHeightM is { } box)
        {
            said.Add($"box {Height(box)}");
        }

        if (dose.ExternalLoadKg is { } load)
        {
            said.Add(Load(load));
        }

        if (dose.BandTensionStandingN is { } band)
        {
            said.Add($"band {Number(Math.Round(band))} N standing");
        }

        if (dose.RunUpSteps is { } steps)
        {
            said.Add($"{steps} steps of run-up");
        }

        return string.Join(", ", said);
    }

    /// <summary>Where a turn is done, for example <c>plyo box 1 and run up lane 1</c>.</summary>
    public static string Station(string station) =>
        station.Replace("+", " and ", StringComparison.Ordinal).Replace('-', ' ');

    /// <summary>A number with as many decimals as it has, at most two.</summary>
    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A height to set up; in inches never more than was planned.</summary>
    private static string Height(double metres) =>
        Speech.Now.Units == UnitSystem.InchPound
            ? $"{Number(Customary.HeightToSetIn(metres))} in"
            : $"{Number(Math.Round(metres * 100, 1))} cm";

    /// <summary>A load to take; in pounds never more than was planned.</summary>
    private static string Load(double kilograms) =>
        Speech.Now.Units == UnitSystem.InchPound
            ? $"{Number(Customary.LoadToTakeLb(kilograms))} lb"
            : $"{Number(kilograms)} kg";

    private static string Limb(string limb) =>
        limb switch
        {
            "each" => " each leg",
            "left" => " left",
            "right" => " right",
            "alternating" => " alternating",
            _ => "",
        };
}
