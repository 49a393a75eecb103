namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Tests that share one served demo squad and one browser.</summary>
[CollectionDefinition("pages")]
public class SharesThePages : ICollectionFixture<ServedDemo>;
