using Jumpwright.Quantities;

namespace Jumpwright.Dosing;

/// <summary>A load and what it is a share of.</summary>
internal sealed record LoadChoice(double LoadKg, Sentence Basis);
