namespace Jumpwright.Quantities;

/// <summary>Why something was not done: one sentence that says what is wrong, where, and what to do.</summary>
/// <param name="Sentence">The sentence.</param>
public sealed record Refusal(string Sentence)
{
    /// <summary>The reason in a few words, where several refusals are told in one line; null where the sentence is all there is.</summary>
    public string? Brief { get; init; }

    public override string ToString() => Sentence;
}
