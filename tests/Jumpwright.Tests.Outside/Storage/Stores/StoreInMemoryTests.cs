using Jumpwright.Storage.Stores;

namespace Jumpwright.Tests.Outside.Storage.Stores;

public sealed class StoreInMemoryTests : StoreContract
{
    protected override Store New() => Store.InMemory(FixedClock.DemoDay);

    protected override void Clean() { }
}
