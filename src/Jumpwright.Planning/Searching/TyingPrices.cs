using System.Collections.Immutable;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// Prices of what ties one athlete's weeks together (growth, steps that open), found as prices of kit are: the weeks are solved at some
/// prices, and what their plans break becomes dearer, what they leave free cheaper (after Polyak). They begin as the duals of
/// the linear relaxation, which know nothing of whole numbers. Whole parts of a thousandth of a point, so that a bound made of them is exact.
/// </summary>
internal sealed class TyingPrices
{
    /// <summary>The share of the bound that better prices are hoped to take off it at first.</summary>
    public const double Hoped = 0.004;

    private readonly ImmutableArray<Tie> _ties;
    private readonly double[] _size;
    private readonly double[] _prices;
    private readonly HopedStep _hoped = new(Hoped);

    /// <summary>At the prices of a relaxation.</summary>
    public TyingPrices(ImmutableArray<Tie> ties)
    {
        _ties = ties;
        _size = [.. ties.Select(t => (double)t.Factors.Select(Math.Abs).Append(1).Max())];
        _prices = [.. ties.Select(t => Signed(t, t.Price))];
    }

    /// <summary>What the prices of all rows come to if each is filled exactly.</summary>
    public long Constant => _ties.Select((t, i) => Whole(i) * (Whole(i) > 0 ? t.High!.Value : t.Low ?? 0)).Sum();

    /// <summary>What each literal costs or earns.</summary>
    public ImmutableDictionary<(string Session, string Exercise, int Literal), long> Extra()
    {
        Dictionary<(string, string, int), long> extra = [];
        for (int i = 0; i < _ties.Length; i++)
        {
            long price = Whole(i);
            for (int j = 0; price != 0 && j < _ties[i].Literals.Length; j++)
            {
                var name = _ties[i].Literals[j];
                extra[name] = extra.GetValueOrDefault(name) - (price * _ties[i].Factors[j]);
            }
        }

        return extra.ToImmutableDictionary();
    }

    /// <summary>Other prices after the weeks were solved at these.</summary>
    /// <param name="now">What the weeks proved, in the parts of the prices.</param>
    /// <param name="least">The least that was proven at any prices before.</param>
    /// <param name="done">The literals that are true in the weeks' plans.</param>
    /// <returns>False when there is nothing to change: the plans keep every row, and pay for none they don't fill.</returns>
    public bool Change(double now, double least, IReadOnlySet<(string Session, string Exercise, int Literal)> done)
    {
        if (now >= least)
        {
            _hoped.Failed();
        }

        double[] over = new double[_ties.Length];
        double length = 0;
        for (int i = 0; i < _ties.Length; i++)
        {
            Tie tie = _ties[i];
            double sum = 0;
            for (int j = 0; j < tie.Literals.Length; j++)
            {
                sum += done.Contains(tie.Literals[j]) ? tie.Factors[j] : 0;
            }

            double side = tie.High is { } high ? high : tie.Low!.Value;
            over[i] = (sum - side) / _size[i];
            if (Signed(tie, _prices[i] + over[i]) == 0 && _prices[i] == 0)
            {
                over[i] = 0;
            }

            length += over[i] * over[i];
        }

        if (length < 1e-9)
        {
            return false;
        }

        double step = _hoped.Of(now, Math.Min(now, least), length);
        for (int i = 0; i < _ties.Length; i++)
        {
            _prices[i] = Signed(_ties[i], _prices[i] + (step * over[i] / _size[i]));
        }

        return true;
    }

    private long Whole(int tie) => (long)Math.Round(_prices[tie]);

    /// <summary>A row with a greatest sum alone has a price above 0, one with a least sum alone below 0.</summary>
    private static double Signed(Tie tie, double price) =>
        price > 0 && tie.High is null ? 0
        : price < 0 && tie.Low is null ? 0
        : price;
}
