using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Safety.Conditions;

/// <summary>What floor and air forbid to everybody on a day. Like all rulings these only close; what is not written down forbids nothing, and the plan says that it is not known.</summary>
public static class ConditionRules
{
    /// <summary>Id of the rule about floors.</summary>
    internal const string HardFloor = "hard-floor";

    /// <summary>Id of the rule about heat.</summary>
    internal const string Heat = "heat";

    private static readonly Source Handbook = SafetySources.Handbook;
    private static readonly Source HeatStand = Bibliography.Get("armstrong-2007");

    /// <summary>Rulings of the day for everybody in the squad, with the floors of its weekly windows.</summary>
    /// <param name="squad">Windows with their surface, and the air of single days.</param>
    /// <param name="day">The day.</param>
    /// <param name="limits">The limits of that day.</param>
    public static ImmutableArray<Ruling> For(Squad squad, LocalDate day, LimitBook limits)
    {
        ArgumentNullException.ThrowIfNull(squad);
        return For(squad, day, squad.Windows.Where(w => w.Day == day.DayOfWeek).Select(w => w.Surface), limits);
    }

    /// <summary>The same with the floors of the sessions that are held that day: a moved session keeps its floor.</summary>
    public static ImmutableArray<Ruling> For(Squad squad, LocalDate day, IEnumerable<Surface?> floors, LimitBook limits)
    {
        ArgumentNullException.ThrowIfNull(squad);
        ArgumentNullException.ThrowIfNull(limits);
        return [.. OfTheFloor(floors, day), .. OfTheAir(squad, day, limits)];
    }

    /// <summary>What has to be said once of a plan's days: floors that nobody named.</summary>
    public static IEnumerable<Sentence> Remarks(Squad squad)
    {
        ArgumentNullException.ThrowIfNull(squad);
        int silent = squad.Windows.Count(w => w.Surface is null);
        if (silent > 0)
        {
            yield return $"squad.yaml does not say what {(silent == squad.Windows.Length ? Sentence.Of($"the sessions are") : Sentence.Of($"{silent} of the sessions are"))} jumped on: keep drops, bounds and running jumps to a floor that gives (sprung floor, rubber, track, grass), never concrete.";
        }
    }

    private static IEnumerable<Ruling> OfTheFloor(IEnumerable<Surface?> floors, LocalDate day)
    {
        // Two sessions of a day share its rulings, so the harder floor counts for both.
        if (floors.FirstOrDefault(f => f is Surface.Hard or Surface.Unknown) is { } hard)
        {
            Sentence floor =
                hard == Surface.Hard
                    ? Sentence.Of($"The floor is hard")
                    : Sentence.Of($"The floor is one that nobody here knows, and counts as hard");
            yield return new(
                HardFloor,
                new NoHighIntensity(),
                $"{floor} on {day}: no high-intensity work. A sprung floor, rubber, a track or grass changes it.",
                Handbook
            );
        }
    }

    private static IEnumerable<Ruling> OfTheAir(Squad squad, LocalDate day, LimitBook limits)
    {
        foreach (Weather air in squad.Weather.Where(w => w.Date == day))
        {
            double heatC = HeatStress.WetBulbGlobeC(air.AirC, air.HumidityPct);
            Sentence seen =
                $"{air.AirC:0.#} °C and {air.HumidityPct:0} % humidity on {day} are about {heatC:0.0} °C WBGT";
            if (heatC > limits["heat-stops"])
            {
                yield return new(
                    Heat,
                    new NothingPlanned($"whoever decides where and when to train"),
                    $"{seen}: nothing is planned for people who may not be used to heat. A cooler hour or hall changes it.",
                    HeatStand
                );
            }
            else if (heatC > limits["heat-care"])
            {
                yield return new(
                    Heat,
                    new NoHighIntensity(),
                    $"{seen}: no high-intensity work, as much rest as work, drink, and watch each other.",
                    HeatStand
                );
                yield return new(
                    Heat,
                    new ContactsPerSessionAtMost(limits.Whole("contacts-under-caution")),
                    $"{seen}: at most {limits.Whole("contacts-under-caution")} contacts.",
                    HeatStand
                );
            }
        }
    }
}
