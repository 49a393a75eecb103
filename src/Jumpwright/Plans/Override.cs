using NodaTime;

namespace Jumpwright.Plans;

/// <summary>A limit that somebody overrode, with name, reason and expiry.</summary>
public sealed record Override(string Limit, string Who, string Reason, LocalDate Until);
