using System.Collections.Immutable;

namespace Jumpwright.Sessions;

/// <summary>One question at the top of the card and what each answer does.</summary>
public sealed record CardQuestion(string Question, ImmutableArray<CardAnswer> Answers);
