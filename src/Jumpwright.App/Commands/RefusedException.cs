using Jumpwright.Quantities;

namespace Jumpwright.App.Commands;

/// <summary>What a command was given can't be worked with; the sentence says why and what to do.</summary>
internal sealed class RefusedException(Refusal refusal) : Exception(refusal.Sentence);
