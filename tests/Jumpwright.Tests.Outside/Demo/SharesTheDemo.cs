namespace Jumpwright.Tests.Outside.Demo;

/// <summary>Tests that share one run of the demo.</summary>
[CollectionDefinition("demo")]
public class SharesTheDemo : ICollectionFixture<DemoRun>;
