using System.Diagnostics.CodeAnalysis;

namespace Jumpwright.Quantities;

/// <summary>A value, or a refusal with its sentence. There is no third way.</summary>
/// <typeparam name="T">What is given when nothing stands against it.</typeparam>
public readonly struct Outcome<T>
    where T : notnull
{
    private readonly T? _value;
    private readonly Refusal? _refusal;

    private Outcome(T? value, Refusal? refusal) => (_value, _refusal) = (value, refusal);

    public static implicit operator Outcome<T>(T value) => new(value, null);

    public static implicit operator Outcome<T>(Refusal refusal) =>
        new(default, refusal ?? throw new ArgumentNullException(nameof(refusal)));

    /// <summary>True with a value, false with a refusal; the default of this struct is neither and throws.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value, [NotNullWhen(false)] out Refusal? refusal)
    {
        if (_value is null && _refusal is null)
        {
            throw new InvalidOperationException("An outcome that was never set.");
        }

        value = _value;
        refusal = _refusal;
        return _refusal is null;
    }

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">It was refused; the message is the sentence.</exception>
    public T Require() =>
        TryGet(out T? value, out Refusal? refusal) ? value : throw new InvalidOperationException(refusal.Sentence);

    /// <summary>Carries the refusal on, or maps the value.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> next)
        where TNext : notnull => TryGet(out T? value, out Refusal? refusal) ? next(value) : refusal;
}
