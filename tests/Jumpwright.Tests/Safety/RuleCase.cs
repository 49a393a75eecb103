using Jumpwright.Athletes;

namespace Jumpwright.Tests.Safety;

/// <summary>An athlete whom a rule just closes something for, or just leaves alone.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Closes">True when it must make a ruling.</param>
/// <param name="Story">In words.</param>
/// <param name="History">What is known.</param>
public sealed record RuleCase(string Rule, bool Closes, string Story, History History)
{
    public override string ToString() => $"{Rule}: {Story} → {(Closes ? "closes" : "leaves alone")}";
}
