using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Storage.Stores;

/// <summary>Gathers, measure by measure, what was stored beside what it would be.</summary>
internal sealed class RemeasureTally
{
    private readonly SortedDictionary<string, List<(string Where, Measure? Before, Measure? After)>> _pairs = new(
        StringComparer.Ordinal
    );

    public void Add(string where, Trial before, Trial after)
    {
        foreach (
            string name in before.Measures.Concat(after.Measures).Select(m => m.Name).Distinct(StringComparer.Ordinal)
        )
        {
            if (!_pairs.TryGetValue(name, out var list))
            {
                list = [];
                _pairs[name] = list;
            }

            list.Add((where, before.Find(name), after.Find(name)));
        }
    }

    public ImmutableArray<RemeasuredMeasure> Measures() => [.. _pairs.Select(p => One(p.Key, p.Value))];

    private static RemeasuredMeasure One(string name, List<(string Where, Measure? Before, Measure? After)> pairs)
    {
        Unit unit = pairs.Select(p => p.After ?? p.Before).First()!.Unit;
        (string Where, double Change, double Before, double After)[] both =
        [
            .. pairs
                .Where(p => p.Before?.Unit == p.After?.Unit)
                .Select(p =>
                    (
                        p.Where,
                        p.After!.Value - p.Before!.Value,
                        p.Before.StandardUncertainty,
                        p.After.StandardUncertainty
                    )
                ),
        ];
        (string Where, double Change, double, double)[] changed = [.. both.Where(b => b.Change != 0)];
        (string Where, double Change, double, double) worst =
            changed.Length == 0 ? default : changed.MaxBy(c => Math.Abs(c.Change));
        return new RemeasuredMeasure(
            name,
            unit,
            both.Length,
            changed.Length,
            pairs.Count(p => p.After is null),
            pairs.Count(p => p.Before is null),
            Middle([.. changed.Select(c => c.Change)]),
            worst.Change,
            worst.Where,
            Middle([.. both.Select(b => b.Before)]),
            Middle([.. both.Select(b => b.After)])
        );
    }

    private static double Middle(double[] values)
    {
        if (values.Length == 0)
        {
            return 0;
        }

        Array.Sort(values);
        int half = values.Length / 2;
        return values.Length % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
    }
}
