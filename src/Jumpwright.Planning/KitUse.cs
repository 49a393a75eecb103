using Jumpwright.Exercises;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// What counts against which kit limit: every use of a kit against all its minutes, and use by work that must be done
/// fresh also against the minutes in which that can be.
/// </summary>
internal static class KitUse
{
    private const string Fresh = "/fresh";

    /// <summary>The limits an exercise counts against, and how many pieces.</summary>
    public static IEnumerable<(string Key, int Count)> Of(Exercise exercise, int phase)
    {
        foreach (KitNeed need in exercise.Kit)
        {
            yield return (need.Id, need.Count);
            if (phase == 1)
            {
                yield return (need.Id + Fresh, need.Count);
            }
        }
    }

    /// <summary>Seconds of kit that items take, by limit and session.</summary>
    public static Dictionary<(string Kit, string Session), long> Of(IEnumerable<Chosen> items)
    {
        Dictionary<(string, string), long> used = [];
        foreach (Chosen item in items)
        {
            long seconds = item.Menu.SecondsOf(item.Sets) + item.Who.PairSeconds(item.Menu, item.Sets);
            foreach ((string key, int count) in Of(item.Exercise, item.Phase))
            {
                used[(key, item.Slot.Id)] = used.GetValueOrDefault((key, item.Slot.Id)) + (count * seconds);
            }
        }

        return used;
    }

    /// <summary>All limits of a squad's kit.</summary>
    public static IEnumerable<string> Keys(PlanRequest request) =>
        request.Kit.Select(k => k.Id).Distinct(StringComparer.Ordinal).SelectMany(k => new[] { k, k + Fresh });

    /// <summary>The kit of a limit.</summary>
    public static string KitOf(string key) =>
        key.EndsWith(Fresh, StringComparison.Ordinal) ? key[..^Fresh.Length] : key;

    /// <summary>The limit's id among all limits.</summary>
    public static string LimitOf(string key) => KitOf(key) == key ? "kit-minutes" : "fresh-kit-minutes";

    /// <summary>Seconds that the limit allows in a session.</summary>
    public static int Seconds(PlanRequest request, string key, SessionSlot slot) =>
        KitOf(key) == key ? request.KitSeconds(key, slot) : request.FreshKitSeconds(KitOf(key), slot);
}
