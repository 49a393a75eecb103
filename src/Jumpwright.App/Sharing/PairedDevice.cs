using NodaTime;

namespace Jumpwright.App.Sharing;

/// <summary>A device that was let in by a one-time code.</summary>
/// <param name="Hash">SHA-256 of the token in its cookie.</param>
/// <param name="Name">As whoever paired it called it.</param>
/// <param name="Since">When.</param>
public sealed record PairedDevice(string Hash, string Name, Instant Since);
