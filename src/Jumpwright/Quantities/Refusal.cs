namespace Jumpwright.Quantities;

/// <summary>Why something was not done: one sentence that says what is wrong, where, and what to do.</summary>
/// <param name="Sentence">The sentence.</param>
public sealed record Refusal(string Sentence)
{
    public override string ToString() => Sentence;
}
