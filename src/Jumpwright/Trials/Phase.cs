namespace Jumpwright.Trials;

/// <summary>A named stretch of time of a trial, s, on the recording's own clock.</summary>
public sealed record Phase(string Name, double FromS, double ToS);
