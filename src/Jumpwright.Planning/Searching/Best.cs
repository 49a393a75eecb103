using System.Collections.Immutable;
using Jumpwright.Planning.Rotations;

namespace Jumpwright.Planning.Searching;

/// <summary>The best plan on the floors that was met, with the places of everything in it.</summary>
internal sealed class Best(Squad squad)
{
    private ImmutableArray<(int[] Sets, Stand[] Stands)> _athletes = [];

    /// <summary>Its points; the fewest there can be before anything was met.</summary>
    public long Points { get; private set; } = long.MinValue;

    /// <summary>Remembers the plan that stands when it is better than any before.</summary>
    public void Look()
    {
        long points = squad.Points;
        if (points > Points)
        {
            Points = points;
            _athletes = [.. squad.Searches.Select(s => (s.State, s.Stands()))];
        }
    }

    /// <summary>Puts the best plan back.</summary>
    public void Return()
    {
        if (Points <= squad.Points)
        {
            return;
        }

        for (int i = 0; i < _athletes.Length; i++)
        {
            squad.Searches[i].Return(_athletes[i].Sets, _athletes[i].Stands);
        }
    }
}
