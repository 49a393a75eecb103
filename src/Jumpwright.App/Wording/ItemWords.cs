using System.Globalization;
using Jumpwright.Dosing;
using Jumpwright.Plans;

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
            said.Add($"from {Cm(drop)} cm");
        }

        if (dose.BoxHeightM is { } box)
        {
            said.Add($"box {Cm(box)} cm");
        }

        if (dose.ExternalLoadKg is { } load)
        {
            said.Add($"{Number(load)} kg");
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

    /// <summary>A number with as many decimals as it has, at most two.</summary>
    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Cm(double metres) => Number(Math.Round(metres * 100, 1));

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
