namespace Jumpwright.Simulation.Validating;

/// <summary>What became of recordings spoiled by one defect.</summary>
/// <param name="Defect">Its id.</param>
/// <param name="What">In words.</param>
/// <param name="Count">How many were tried.</param>
/// <param name="Refused">How many were refused.</param>
/// <param name="Silent">How many were measured with a height or contact that is wrong and not named doubtful.</param>
/// <param name="Sentence">The first refusal's sentence; null without one.</param>
public sealed record SpoiledResult(string Defect, string What, int Count, int Refused, int Silent, string? Sentence);
