namespace Jumpwright.Trials;

/// <summary>An event that a person saw elsewhere than measuring did.</summary>
/// <param name="Trial">Number of the trial in its recording, from 1.</param>
/// <param name="Event">Which event.</param>
/// <param name="TimeS">Where it is, s, on the recording's own clock.</param>
public sealed record EventCorrection(int Trial, TrialEvent Event, double TimeS);
