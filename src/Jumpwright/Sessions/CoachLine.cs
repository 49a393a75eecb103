using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>One athlete's line: items in order, contacts, and what the coach must know.</summary>
public sealed record CoachLine(string AthleteName, ImmutableArray<Sentence> Items, int Contacts, Sentence? Watch);
