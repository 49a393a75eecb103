using Jumpwright.Trials;

namespace Jumpwright.App.Desk.Journals;

/// <summary>Names of a trial's events: as the contract has them, and as people say them.</summary>
internal static class EventNames
{
    public static readonly (TrialEvent Event, string Name, string Said)[] All =
    [
        (TrialEvent.FirstTouchDown, "first_touch_down", "first touch-down"),
        (TrialEvent.Onset, "onset", "onset"),
        (TrialEvent.PeakDownwardVelocity, "peak_downward_velocity", "peak downward velocity"),
        (TrialEvent.Bottom, "bottom", "lowest point"),
        (TrialEvent.TakeOff, "take_off", "take-off"),
        (TrialEvent.TouchDown, "touch_down", "touch-down"),
    ];

    public static TrialEvent? Parse(string name) =>
        All.Where(e => e.Name == name).Select(e => (TrialEvent?)e.Event).FirstOrDefault();

    public static string Said(string name) =>
        All.Where(e => e.Name == name).Select(e => e.Said).FirstOrDefault() ?? name.Replace('_', ' ');

    /// <summary>The events a trial has, in the order in which they happen.</summary>
    public static IEnumerable<(string Name, string Said, double AtS)> Of(TrialEvents events)
    {
        foreach ((TrialEvent which, string name, string said) in All)
        {
            double? at = which switch
            {
                TrialEvent.FirstTouchDown => events.FirstTouchDownS,
                TrialEvent.Onset => events.OnsetS,
                TrialEvent.PeakDownwardVelocity => events.PeakDownwardVelocityS,
                TrialEvent.Bottom => events.BottomS,
                TrialEvent.TakeOff => events.TakeOffS,
                _ => events.TouchDownS,
            };
            if (at is { } s)
            {
                yield return (name, said, s);
            }
        }
    }
}
