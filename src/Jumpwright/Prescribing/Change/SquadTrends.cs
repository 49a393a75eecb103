using System.Collections.Immutable;

namespace Jumpwright.Prescribing.Change;

/// <summary>The trends of a squad, each athlete's made when they are asked for, against the noise of all.</summary>
public sealed class SquadTrends
{
    private readonly Dictionary<string, ImmutableArray<Series>> _series;
    private readonly Func<ImmutableArray<Series>, ImmutableArray<Trend>> _make;

    internal SquadTrends(
        Dictionary<string, ImmutableArray<Series>> series,
        Func<ImmutableArray<Series>, ImmutableArray<Trend>> make
    ) => (_series, _make) = (series, make);

    /// <summary>An athlete's trends with at least two sessions; none for somebody who is not of the squad.</summary>
    public ImmutableArray<Trend> Of(string athleteId) =>
        _series.TryGetValue(athleteId, out ImmutableArray<Series> own) ? _make(own) : [];
}
