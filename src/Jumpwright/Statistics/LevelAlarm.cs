namespace Jumpwright.Statistics;

/// <summary>A session at which the level was no longer where it had been.</summary>
/// <param name="Session">Index of the session.</param>
/// <param name="Since">Index of the first session of what it was compared with.</param>
/// <param name="Risen">Up or down.</param>
public readonly record struct LevelAlarm(int Session, int Since, bool Risen);
