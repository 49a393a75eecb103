using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators;

/// <summary>
/// What every calculator gives: values with their doubt, what they stand on, and a sentence for the practitioner. A result never
/// allows anything by itself; ladder, limits and restrictions decide.
/// </summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values">Named values with unit, standard uncertainty and method, the chief one first.</param>
/// <param name="Sentence">In plain words, with the numbers.</param>
public abstract record Calculation(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence)
{
    /// <summary>The sentence without the test that it would wish for.</summary>
    public Sentence Answer
    {
        get => field ?? Sentence;
        init;
    }

    /// <summary>What to be careful about.</summary>
    public ImmutableArray<Sentence> Warnings { get; init; } = [];

    /// <summary>The cheapest next test that would sharpen the answer; null where none applies.</summary>
    public Sentence? NextTest { get; init; }

    /// <summary>The value of that name.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public Measure Value(string name) =>
        Values.FirstOrDefault(v => v.Name == name)
        ?? throw new InvalidOperationException($"{Basis.Id} gives no {name}.");
}
