namespace Jumpwright.Sessions;

/// <summary>An answer and what it does today.</summary>
public sealed record CardAnswer(string Answer, string Then);
