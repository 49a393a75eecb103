using System.Collections.Concurrent;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning;

/// <summary>
/// Which requirements a search has to keep. Ordinarily all; the search for a collision asks for fewer at a time.
/// </summary>
internal sealed class Asked
{
    private readonly HashSet<string>? _only;
    private readonly ConcurrentDictionary<string, Requirement> _met = new(StringComparer.Ordinal);

    private Asked(HashSet<string>? only) => _only = only;

    /// <summary>Every requirement there is.</summary>
    public static Asked All() => new(null);

    /// <summary>Only these, by id.</summary>
    public static Asked Only(IEnumerable<string> ids) => new(new HashSet<string>(ids, StringComparer.Ordinal));

    /// <summary>Requirements that the model met while it was built, whether asked for or not.</summary>
    public IReadOnlyCollection<Requirement> Met => [.. _met.Values];

    /// <summary>True when the requirement has to be kept. Remembers it.</summary>
    public bool For(string id, string kind, Sentence text)
    {
        _met.TryAdd(id, new Requirement(id, kind, text));
        return _only is null || _only.Contains(id);
    }

    /// <summary>A limit, for one athlete, kit or session.</summary>
    public bool ForLimit(string limitId, string subject, Sentence text) =>
        For($"limit:{limitId}:{subject}", "limit", text);

    /// <summary>That the items of a session fit on one time line.</summary>
    public bool ForRotation(string sessionId) =>
        ForLimit(
            "rotation",
            sessionId,
            $"Everybody's stations in {new SaidSession(sessionId)} fit on one time line with the kit there is."
        );
}
