using System.Globalization;
using Jumpwright.Dosing;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>A planned item in the shorthand of a coach's sheet.</summary>
internal static class ItemWords
{
    /// <summary>For example <c>3 × 5 each leg, 30 cm</c>.</summary>
    public static string Dose(PlannedItem item)
    {
        string set = Setting(item);
        return set.Length == 0 ? Sets(item.Sets, item.Dose) : $"{Sets(item.Sets, item.Dose)}, {set}";
    }

    /// <summary>What is set up for it, for example <c>from 30 cm, box 40 cm</c>; empty where nothing is.</summary>
    public static string Setting(PlannedItem item)
    {
        Dose dose = item.Dose;
        var said = new List<string>();
        if (dose.DropHeightM is { } drop)
        {
            said.Add(T["item.from", Height(drop)]);
        }

        if (dose.BoxHeightM is { } box)
        {
            said.Add(T["item.box", Height(box)]);
        }

        if (dose.ExternalLoadKg is { } load)
        {
            said.Add(Load(load));
        }

        if (dose.BandTensionStandingN is { } band)
        {
            said.Add(T["item.band", Number(Math.Round(band))]);
        }

        if (dose.RunUpSteps is { } steps)
        {
            said.Add(T["item.run-up", steps]);
        }

        return string.Join(", ", said);
    }

    /// <summary>Where a turn is done, for example <c>plyo box 1 and run up lane 1</c>.</summary>
    public static string Station(string station) =>
        string.Join($" {T["station.and"]} ", station.Split('+').Select(Place));

    /// <summary>Kit by its id, or one piece of it, for example <c>plyo box 1</c>; what has no word of its own stands as it is written.</summary>
    public static string Place(string id)
    {
        int at = id.LastIndexOf('-');
        bool numbered = at > 0 && int.TryParse(id[(at + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out _);
        string kit = numbered ? id[..at] : id;
        return (Find($"station.{kit}") ?? kit.Replace('-', ' ')) + (numbered ? $" {id[(at + 1)..]}" : "");
    }

    /// <summary>A number with as many decimals as it has, at most two.</summary>
    public static string Number(double value) => Numerals.Write(value, "0.##", Speech.Now.Language);

    /// <summary>A height to set up.</summary>
    private static string Height(double metres) => UnitWords.Spoken(Math.Round(metres * 100, 1), "cm");

    /// <summary>A load to take; in pounds never more than was planned.</summary>
    private static string Load(double kilograms) =>
        Speech.Now.Units == UnitSystem.InchPound
            ? $"{Number(Customary.LoadToTakeLb(kilograms))} lb"
            : $"{Number(kilograms)} kg";

    private static string Sets(int sets, Dose dose) =>
        dose.Limb is "each" or "left" or "right" or "alternating"
            ? T[$"item.limb.{dose.Limb}", sets, dose.Reps]
            : $"{sets} × {dose.Reps}";
}
