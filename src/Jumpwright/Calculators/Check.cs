using Jumpwright.Quantities;

namespace Jumpwright.Calculators;

/// <summary>One condition of a set-up and whether it is met.</summary>
/// <param name="Id">Kebab-case id.</param>
/// <param name="State">Met, not met, or not known; not known counts as not met.</param>
/// <param name="Sentence">With the numbers.</param>
public sealed record Check(string Id, CheckState State, Sentence Sentence);
