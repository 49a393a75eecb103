namespace Jumpwright.Trials;

/// <summary>The events of a trial that a person may set by hand.</summary>
public enum TrialEvent
{
    Onset,
    PeakDownwardVelocity,
    Bottom,
    TakeOff,
    TouchDown,
    FirstTouchDown,
}
