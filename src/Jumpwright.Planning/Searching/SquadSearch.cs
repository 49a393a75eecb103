using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// A larger squad. Athletes share nothing but kit; a price for each second of each kit in each session takes that tie away
/// (Lagrangian relaxation), and what is proven of each athlete at any prices, plus the price of all kit there is, is a bound
/// that no plan can pass. Plans come from each athlete's exact weeks, put on the sessions' floors one athlete after the other, and from
/// local search that keeps every limit there: every move that is kept has its place. Work is counted in
/// rounds and moves, in two lanes whatever the machine has, so that the same request gives the same plan.
/// </summary>
internal sealed class SquadSearch(PlanRequest request, IProgress<Sentence>? progress, CancellationToken cancel)
{
    private const double RoundsForEachUnit = 0.4;
    private const int RoundsMost = 40;

    /// <summary>Rounds that prices from the whole squad's relaxation get: they are right, or nearly.</summary>
    private const int RoundsOfRightPrices = 2;

    /// <summary>
    /// Menu entries up to which the whole squad goes into one linear relaxation: its prices of kit are right at once. With few
    /// sessions kit is short and prices matter; with many they hardly do, and rounds find them.
    /// </summary>
    public const int EntriesInOneRelaxation = 4000;

    /// <summary>
    /// Deterministic time for the bound in whole numbers, for each unit of a small budget; with a large one most weeks are proven, and
    /// what is left of them proves little.
    /// </summary>
    private const double ProvingForEachUnit = 0.27;

    private const double ProvingAtOnce = 0.8;
    private const double ProvingForEachLater = 0.19;

    /// <summary>The best plan the budget allows.</summary>
    public Found Best()
    {
        Squad squad = new(request);
        double units = request.Budget.DeterministicTime;
        using SquadBound bound = new(squad, cancel);
        int rounds = Math.Clamp((int)(RoundsForEachUnit * units), 1, RoundsMost);
        if (squad.Entries <= EntriesInOneRelaxation)
        {
            rounds = RoundsOfRightPrices;
            bound.Start(LinearRelaxation.Prices(SquadModel.Of(request, Asked.All(), new Scope())));
        }

        if (bound.Price(rounds, progress) is { } ended)
        {
            return ended;
        }

        if (new Beginning(squad, cancel).Begin() is { } other)
        {
            return other with { Bound = other.Objective is null ? null : bound.Points };
        }

        Annealing annealing = new(squad, progress, cancel);
        if (!request.Keeps.IsEmpty)
        {
            // What is kept stands everywhere at once: it is fitted to itself before it is fitted to the floors.
            annealing.WithoutFloors(bound.Prices, units);
        }

        squad.Share([], request);
        Floors floors = new(squad, cancel);
        if (!floors.Open())
        {
            return floors.Locked(bound.Points);
        }

        // One lane proves, the other looks for better; neither waits for the other, so both stay reproducible.
        long most = bound.Points;
        Parallel.Invoke(
            Squad.Two(cancel),
            () => bound.ByWeeks(Math.Min(ProvingForEachUnit * units, ProvingAtOnce + (ProvingForEachLater * units))),
            () => annealing.OnFloors(units, most, bound)
        );
        return floors.Found(bound.Points);
    }
}
