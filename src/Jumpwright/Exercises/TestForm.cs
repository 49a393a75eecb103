using System.Collections.Immutable;

namespace Jumpwright.Exercises;

/// <summary>One way to do a test.</summary>
/// <param name="Exercises">The jumps or lifts of the catalogue that are done in it, every one; none for a test by hand that has neither.</param>
public sealed record TestForm(ImmutableArray<string> Exercises)
{
    /// <summary>The words of the test do not say which jump is meant, so it is named to whoever is sent to it.</summary>
    public bool IsNamed { get; init; }
}
