using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>An answer and what it does today.</summary>
public sealed record CardAnswer(Sentence Answer, Sentence Then);
