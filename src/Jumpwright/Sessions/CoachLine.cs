using System.Collections.Immutable;

namespace Jumpwright.Sessions;

/// <summary>One athlete's line: items in order, contacts, and what the coach must know.</summary>
public sealed record CoachLine(string AthleteName, ImmutableArray<string> Items, int Contacts, string? Watch);
