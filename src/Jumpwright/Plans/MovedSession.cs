using NodaTime;

namespace Jumpwright.Plans;

/// <summary>A session that is held at another time.</summary>
/// <param name="SessionId">As it was called before it moved.</param>
/// <param name="Date">Its new day.</param>
/// <param name="Start">Its new start, local.</param>
public sealed record MovedSession(string SessionId, LocalDate Date, LocalTime Start);
