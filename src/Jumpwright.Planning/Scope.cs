using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>What a model is made for: everybody or a few, with which kit, and at what price.</summary>
internal sealed record Scope
{
    /// <summary>Points are counted in thousandths, so that prices for seconds of kit can be whole numbers too.</summary>
    public const long PointScale = 1000;

    /// <summary>Only these athletes; null: everybody.</summary>
    public ImmutableArray<AthleteRequest>? Only { get; init; }

    /// <summary>False when only the question "can it be done" is asked.</summary>
    public bool WithObjective { get; init; } = true;

    /// <summary>Seconds of kit that may be used, by kit and session; what is not named has its limit.</summary>
    public ImmutableDictionary<(string Kit, string Session), long> KitSeconds { get; init; } =
        ImmutableDictionary<(string, string), long>.Empty;

    /// <summary>Price of a second of kit, in thousandths of a point, by kit and session.</summary>
    public ImmutableDictionary<(string Kit, string Session), long> Prices { get; init; } =
        ImmutableDictionary<(string, string), long>.Empty;

    /// <summary>Into how many parts a thousandth of a point is cut, so that what is added to it can be whole too.</summary>
    public long Fine { get; init; } = 1;

    /// <summary>
    /// Added to the objective of an entry's literals (0: done at all, 1, 2, …: one more set), in the parts of
    /// <see cref="Fine"/>, by session and exercise.
    /// </summary>
    public ImmutableDictionary<(string Session, string Exercise, int Literal), long> Extra { get; init; } =
        ImmutableDictionary<(string, string, int), long>.Empty;

    /// <summary>
    /// What an entry costs as its athlete's share of a group, in thousandths of a point, by session and exercise: for models of one athlete,
    /// that can't know who else does it. The shares of all who may do it add up to no more than the group costs.
    /// </summary>
    public ImmutableDictionary<(string Session, string Exercise), long> GroupShares { get; init; } =
        ImmutableDictionary<(string, string), long>.Empty;

    /// <summary>Sets by session and exercise that the search tries first; null: none. They need not keep every limit.</summary>
    public IReadOnlyDictionary<(string Session, string Exercise), int>? Sketch { get; init; }

    /// <summary>Sets of items that are proven not to fit on one time line together.</summary>
    public ImmutableArray<ImmutableArray<Chosen>> Cuts { get; init; } = [];
}
