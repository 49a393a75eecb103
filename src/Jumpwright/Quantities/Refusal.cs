namespace Jumpwright.Quantities;

/// <summary>Why something was not done: one sentence that says what is wrong, where, and what to do.</summary>
/// <param name="Sentence">The sentence.</param>
public sealed record Refusal(string Sentence)
{
    /// <summary>The sentence for whoever shows it; words and no more where it was refused in English alone.</summary>
    public Sentence Said
    {
        get => field ?? Quantities.Sentence.Plain(Sentence);
        private init;
    }

    /// <summary>A refusal whose sentence can be said in other languages and units.</summary>
    public static Refusal Of(Sentence said)
    {
        ArgumentNullException.ThrowIfNull(said);
        return new(said.ToString()) { Said = said };
    }

    /// <summary>The reason in a few words, where several refusals are told in one line; null where the sentence is all there is.</summary>
    public Sentence? Brief { get; init; }

    public override string ToString() => Sentence;
}
