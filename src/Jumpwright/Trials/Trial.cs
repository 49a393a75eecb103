using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>One measured effort. A trial that exists was measured; what could not be trusted was refused instead.</summary>
/// <param name="Number">1 for the first trial of the recording.</param>
/// <param name="Task">What it was measured as.</param>
/// <param name="Events">Instants on the recording's own clock.</param>
/// <param name="Measures">In the order of the contract.</param>
/// <param name="Contacts">Repeated hops: every complete contact, in order; else empty.</param>
/// <param name="Warnings">Sentences for the person.</param>
/// <param name="Doubtful">Names of measures that must not be decided from.</param>
public sealed record Trial(
    int Number,
    JumpTask Task,
    TrialEvents Events,
    ImmutableArray<Measure> Measures,
    ImmutableArray<HopContact> Contacts,
    ImmutableArray<string> Warnings,
    ImmutableArray<string> Doubtful
)
{
    /// <summary>The measure of that name, or null where the task or recording does not allow it.</summary>
    public Measure? Find(string name) =>
        Measures.FirstOrDefault(m => string.Equals(m.Name, name, StringComparison.Ordinal));

    /// <summary>
    /// Whether a mean or a trend may take a measure: all that is not doubtful, and what is so only because its timer counts
    /// coarsely, for that error is chance, its ± is known, and many such trials tell as much as few fine ones.
    /// </summary>
    public bool MayBeAveraged(string name) =>
        !Doubtful.Contains(name, StringComparer.Ordinal)
        || (
            Warnings.Any(w => w.StartsWith(Cautions.Coarse, StringComparison.Ordinal))
            && !Warnings.Contains(Cautions.HopAtTheEdge.ToString(), StringComparer.Ordinal)
        );

    /// <summary>The same with a sentence more, and those of the named measures that it has doubtful.</summary>
    internal Trial Doubting(string sentence, IEnumerable<string> names) =>
        this with
        {
            Warnings = Warnings.Add(sentence),
            Doubtful =
            [
                .. Doubtful
                    .Union(names.Where(name => Find(name) is not null), StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal),
            ],
        };

    /// <summary>The measure of that name, or null where it is absent or named doubtful.</summary>
    public Measure? FindTrusted(string name) => Doubtful.Contains(name, StringComparer.Ordinal) ? null : Find(name);
}
