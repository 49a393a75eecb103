using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>A limit that a plan breaks, and by how much in the limit's own unit.</summary>
public sealed record Breach(
    string LimitId,
    string? AthleteId,
    string? SessionId,
    double Amount,
    string Unit,
    Sentence Sentence
);
