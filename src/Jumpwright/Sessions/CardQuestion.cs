using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>One question at the top of the card, the blanks to write in, and what each answer does.</summary>
/// <param name="Question">The question.</param>
/// <param name="Blanks">Labels of the blanks to write in, in order; empty when an answer is only ticked.</param>
/// <param name="Answers">Every answer.</param>
public sealed record CardQuestion(
    Sentence Question,
    ImmutableArray<Sentence> Blanks,
    ImmutableArray<CardAnswer> Answers
);
