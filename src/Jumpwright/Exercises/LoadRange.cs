namespace Jumpwright.Exercises;

/// <summary>Usual range of an external load, as a share of something known of the athlete.</summary>
/// <param name="Of"><c>body-mass</c>, or <c>hex-bar-test</c>: the load of the hex-bar screen.</param>
/// <param name="MinShare">Lowest share, for example 0.10 for 10 %.</param>
/// <param name="MaxShare">Highest share.</param>
/// <param name="SourceId">Where the range comes from. Two bases are never mixed: 40 % of body mass is not 40 % of a maximum.</param>
public sealed record LoadRange(string Of, double MinShare, double MaxShare, string SourceId);
