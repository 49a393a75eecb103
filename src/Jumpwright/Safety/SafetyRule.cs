using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>
/// One rule of this room: one sentence, one source, and what it forbids to one athlete on one day.
/// A rule only ever closes; what it does not know, it closes for.
/// </summary>
internal abstract class SafetyRule
{
    /// <summary>Kebab-case id, the <see cref="Ruling.LimitId"/> of every ruling it makes.</summary>
    public abstract string Id { get; }

    /// <summary>The rule in one sentence, for the practitioner.</summary>
    public abstract string Says { get; }

    /// <summary>Where it comes from.</summary>
    public abstract Source Source { get; }

    /// <summary>What it forbids; nothing when it does not apply.</summary>
    public abstract IEnumerable<Ruling> Rule(SafetyCase @case);

    /// <summary>A ruling of this rule.</summary>
    protected Ruling Close(RulingEffect effect, Sentence because) => new(Id, effect, because, Source);
}
