using NodaTime;

namespace Jumpwright.App.Sharing;

/// <summary>A link that shows one card until the session is over.</summary>
/// <param name="Hash">SHA-256 of its token.</param>
/// <param name="SessionId">The session.</param>
/// <param name="AthleteId">Whose card.</param>
/// <param name="Ends">When it stops.</param>
public sealed record CardLink(string Hash, string SessionId, string AthleteId, Instant Ends);
