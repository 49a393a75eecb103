namespace Jumpwright.Exercises;

/// <summary>Kit one athlete needs at once.</summary>
public sealed record KitNeed(string Id, int Count);
