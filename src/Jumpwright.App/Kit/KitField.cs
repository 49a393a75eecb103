namespace Jumpwright.App.Kit;

/// <summary>One field of a calculator's form.</summary>
/// <param name="Name">In the address.</param>
/// <param name="Unit">Unit; empty when it has none.</param>
/// <param name="Start">What stands there at first.</param>
/// <param name="Choices">Words to choose from, as they stand in the address; empty for a number or a list of numbers.</param>
public sealed record KitField(string Name, string Unit, string Start, params string[] Choices);
