using System.Globalization;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>
/// The room a plan leaves, in contacts: of the week, and of each tissue at its hardest tier, so that one contact is one contact
/// whatever it is of.
/// </summary>
internal static class RoomWords
{
    /// <summary>The hardest tier of demand there is.</summary>
    private const int Hardest = 3;

    /// <summary>For example <c>82 contacts; of the hardest (tier 3): Achilles 60, bone 41.</c></summary>
    public static string Of(Plan plan, string athleteId) => Of(plan.Limits.Where(l => l.AthleteId == athleteId));

    /// <summary>The same of an athlete's own readings.</summary>
    public static string Of(IEnumerable<LimitReading> readings)
    {
        LimitReading[] theirs = [.. readings];
        double? Room(Func<LimitReading, bool> which) =>
            theirs
                .Where(l => l.Sense != "at-least" && which(l))
                .Select(l => (double?)(l.Limit - (l.Highest ?? 0)))
                .Min();

        double? all = Room(l => l is { Unit: "contacts", Period: "week" });
        if (all is null)
        {
            return T["room.none"];
        }

        string tissues = string.Join(
            ", ",
            Enum.GetValues<Tissue>()
                .Select(t =>
                    (
                        Tissue: t,
                        Room: Room(l => l.Id.EndsWith("-" + t.ToString().ToLowerInvariant(), StringComparison.Ordinal))
                    )
                )
                .Where(t => t.Room is not null)
                .Select(t =>
                    $"{Spoken.Of(t.Tissue)} {Math.Max(0, Math.Min(all.Value, Math.Floor(t.Room!.Value / Hardest))):0}"
                )
        );
        string left = Math.Max(0, all.Value).ToString("0", CultureInfo.InvariantCulture);
        return tissues.Length == 0 ? T["room.of", left] : T["room.tissues", left, Hardest, tissues];
    }

    /// <summary>How far a limit is used; null where there was nothing to count.</summary>
    public static double? Reached(LimitReading reading) =>
        reading.Sense == "at-least" ? reading.Lowest : reading.Highest;

    /// <summary>What is left of a limit, in its own unit; null where there was nothing to count.</summary>
    public static double? Left(LimitReading reading) =>
        Reached(reading) is not { } reached ? null
        : reading.Sense == "at-least" ? reached - reading.Limit
        : reading.Limit - reached;
}
