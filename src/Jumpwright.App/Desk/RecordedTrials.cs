using System.Collections.Concurrent;
using System.Collections.Immutable;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>What can be asked of all recordings of a squad without reading their trials, as of the last import.</summary>
public sealed class RecordedTrials
{
    private readonly Store _store;
    private readonly ConcurrentDictionary<LocalDate, Once<Later>> _after = new();

    internal RecordedTrials(Store store) => _store = store;

    /// <summary>How many trials lie after a day, and the last day among them.</summary>
    public Later After(LocalDate day) =>
        _after
            .GetOrAdd(
                day,
                d => new Once<Later>(() =>
                {
                    (int trials, LocalDate? last) = _store.TrialsAfter(d);
                    return new Later(trials, last ?? d);
                })
            )
            .Value;

    /// <summary>Whose trials a recording holds; nobody's when it counts nowhere.</summary>
    public ImmutableArray<string> OwnersOf(string sha256) => _store.OwnersOf(sha256);

    /// <summary>Trials after a day.</summary>
    /// <param name="Trials">How many.</param>
    /// <param name="Last">The last day among them; the asked day when there are none.</param>
    public sealed record Later(int Trials, LocalDate Last);
}
