namespace Jumpwright.Quantities;

/// <summary>How a probability is written: never as certain, whatever its last digit would round to.</summary>
public static class Probability
{
    /// <summary>Below it, and as far below 1, only the bound is said.</summary>
    public const double Least = 0.01;

    /// <summary>For example <c>0.85</c>, <c>below 0.01</c> or <c>above 0.99</c>.</summary>
    public static Sentence Said(double probability) =>
        probability < Least ? Sentence.Of($"below {Least:0.00}")
        : probability > 1 - Least ? Sentence.Of($"above {1 - Least:0.00}")
        : Sentence.Of($"{probability:0.00}");
}
