using Jumpwright.Quantities;

namespace Jumpwright.Paper.Layout;

/// <summary>What paper says of its own and of the core, written out in the reader's language and units.</summary>
internal sealed class PaperWords(SentenceWriter writer)
{
    public string Language => writer.Language;

    /// <summary>The sentence in full.</summary>
    public string Say(Sentence sentence) => writer.Write(sentence);

    /// <summary>The same for a place that may hold nothing.</summary>
    public string? SayOrNull(Sentence? sentence) => sentence is null ? null : writer.Write(sentence);
}
