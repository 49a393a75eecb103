using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json.Serialization;

namespace Jumpwright.Quantities;

/// <summary>
/// A sentence that is not written out yet: its English with holes, and what fills them. An interpolated string becomes one where a
/// sentence is asked for. Whoever shows it chooses language and units (<see cref="SentenceWriter"/>); as a string it is English
/// in metres and kilograms, which files, commands and stores keep.
/// </summary>
/// <remarks>
/// What is given as a string stands in every language as it is: names, ids, what somebody wrote. What has words of its own goes in
/// as a <see cref="Sentence"/>, a day as a date, a height as a <see cref="Length"/>.
/// </remarks>
[InterpolatedStringHandler]
[JsonConverter(typeof(SentenceJson))]
public sealed class Sentence : IEquatable<Sentence>
{
    private readonly StringBuilder _template;
    private readonly ImmutableArray<object?>.Builder _arguments;
    private string? _written;
    private string? _english;

    /// <summary>For the compiler, which fills it from an interpolated string.</summary>
    [EditorBrowsable(EditorBrowsableState.Never)]
    public Sentence(int literalLength, int formattedCount)
    {
        _template = new StringBuilder(literalLength + (4 * formattedCount));
        _arguments = ImmutableArray.CreateBuilder<object?>(formattedCount);
    }

    private Sentence(Sentence said, IReason reason)
    {
        _template = said._template;
        _arguments = said._arguments;
        _written = said.Template;
        IsPlain = said.IsPlain;
        Reason = reason;
    }

    /// <summary>The English with numbered holes, as <see cref="string.Format(string, object?[])"/> reads it; it names the kind of the sentence.</summary>
    public string Template => _written ??= _template.ToString();

    /// <summary>What fills the holes, in their order.</summary>
    public ImmutableArray<object?> Arguments => _arguments.ToImmutable();

    /// <summary>What kind of reason it says; null for most sentences. Words alone make two sentences equal.</summary>
    public IReason? Reason { get; }

    /// <summary>True for words that came written out, out of a file or from somebody: they are of no known template.</summary>
    public bool IsPlain { get; private init; }

    [return: NotNullIfNotNull(nameof(sentence))]
    public static implicit operator string?(Sentence? sentence) => sentence?.ToString();

    public static bool operator ==(Sentence? one, Sentence? other) => Equals(one, other);

    public static bool operator !=(Sentence? one, Sentence? other) => !Equals(one, other);

    /// <summary>The sentence itself, where the compiler has to be told that an interpolated string is one.</summary>
    public static Sentence Of(Sentence sentence) => sentence;

    /// <summary>A sentence put together again from its template and what fills it, as <see cref="Template"/> and <see cref="Arguments"/> give them.</summary>
    public static Sentence Of(string template, ImmutableArray<object?> arguments)
    {
        ArgumentNullException.ThrowIfNull(template);
        Sentence sentence = new(template.Length, arguments.Length);
        sentence._template.Append(template);
        sentence._arguments.AddRange(arguments);
        return sentence;
    }

    /// <summary>Words that came written out; they stay as they are.</summary>
    public static Sentence Plain(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        Sentence plain = new(words.Length, 0) { IsPlain = true };
        plain.AppendLiteral(words);
        return plain;
    }

    /// <summary>A sentence out of a catalogue, which is its own template: it has other languages where somebody gave it words in them.</summary>
    public static Sentence OfCatalogue(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        Sentence sentence = new(words.Length, 0);
        sentence.AppendLiteral(words);
        return sentence;
    }

    /// <summary>Several in a row.</summary>
    /// <param name="between">What stands between two of them; no words.</param>
    /// <param name="sentences">The sentences.</param>
    public static Sentence Join(string between, IEnumerable<Sentence> sentences)
    {
        ArgumentNullException.ThrowIfNull(sentences);
        Sentence[] all = [.. sentences];
        if (all.Length == 1)
        {
            return all[0];
        }

        Sentence joined = new(0, all.Length);
        for (int i = 0; i < all.Length; i++)
        {
            if (i > 0)
            {
                joined.AppendLiteral(between);
            }

            joined.AppendFormatted(all[i]);
        }

        return joined;
    }

    /// <summary>For the compiler.</summary>
    [EditorBrowsable(EditorBrowsableState.Never)]
    public void AppendLiteral(string words)
    {
        ThrowIfRead();
        _template.Append(
            words.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal)
        );
    }

    /// <summary>For the compiler.</summary>
    [EditorBrowsable(EditorBrowsableState.Never)]
    public void AppendFormatted<T>(T value)
    {
        ThrowIfRead();
        _template.Append('{').Append(_arguments.Count).Append('}');
        _arguments.Add(value);
    }

    /// <summary>For the compiler.</summary>
    [EditorBrowsable(EditorBrowsableState.Never)]
    public void AppendFormatted<T>(T value, string format)
    {
        ThrowIfRead();
        _template.Append('{').Append(_arguments.Count).Append(':').Append(format).Append('}');
        _arguments.Add(value);
    }

    /// <summary>The same words, as that reason.</summary>
    public Sentence As(IReason reason) => new(this, reason);

    /// <summary>True when it is of the same kind, whatever fills it.</summary>
    public bool IsLike(Sentence other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return !IsPlain && !other.IsPlain && string.Equals(Template, other.Template, StringComparison.Ordinal);
    }

    public bool Equals(Sentence? other) =>
        ReferenceEquals(this, other)
        || (other is not null && string.Equals(ToString(), other.ToString(), StringComparison.Ordinal));

    public override bool Equals(object? obj) => Equals(obj as Sentence);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(ToString());

    /// <summary>The sentence in English, in metres and kilograms.</summary>
    public override string ToString() => _english ??= SentenceWriter.English.Write(this);

    private void ThrowIfRead()
    {
        if (_written is not null)
        {
            throw new InvalidOperationException("A sentence that was read is not written on.");
        }
    }
}
