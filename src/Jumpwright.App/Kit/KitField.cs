namespace Jumpwright.App.Kit;

/// <summary>One field of a calculator's form.</summary>
/// <param name="Name">In the address.</param>
/// <param name="Unit">
/// Unit, metric; empty when it has none. A list of pairs has one on each side, as in <c>kg:m</c>; <c>kg or m/s</c> goes by what the
/// form asks about.
/// </param>
/// <param name="Start">What stands there at first, in that unit.</param>
/// <param name="Choices">Words to choose from, as they stand in the address; empty for a number or a list of numbers.</param>
public sealed record KitField(string Name, string Unit, string Start, params string[] Choices)
{
    /// <summary>Whether it takes pairs, such as <c>20:0.28, 40:0.21</c>.</summary>
    public bool IsList => Unit.Contains(':', StringComparison.Ordinal);
}
