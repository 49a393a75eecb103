namespace Jumpwright.Trials;

/// <summary>
/// A stretch of time on the plate. It has no touch-down where the recording begins loaded, no take-off where it ends loaded.
/// </summary>
/// <param name="Samples">Samples on the plate.</param>
/// <param name="TouchDown">When it began.</param>
/// <param name="TakeOff">When it ended.</param>
internal sealed record Contact(Stretch Samples, Instant? TouchDown, Instant? TakeOff);
