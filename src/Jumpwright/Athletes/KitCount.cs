namespace Jumpwright.Athletes;

/// <summary>A piece of kit and how many there are.</summary>
/// <param name="Id">Kebab-case id, as the catalogue names kit.</param>
/// <param name="Count">How many can be used at once.</param>
public sealed record KitCount(string Id, int Count);
