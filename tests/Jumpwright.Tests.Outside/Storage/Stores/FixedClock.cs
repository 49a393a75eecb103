namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>A clock that stands still.</summary>
internal sealed class FixedClock(DateTimeOffset now) : TimeProvider
{
    public static readonly FixedClock DemoDay = new(new DateTimeOffset(2027, 1, 4, 9, 0, 0, TimeSpan.Zero));

    public override DateTimeOffset GetUtcNow() => now;
}
