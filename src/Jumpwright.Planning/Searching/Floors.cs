using System.Collections.Immutable;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// The sessions' floors. At first what finds no place is done with fewer sets, or left out: the cheapest cut of its athlete
/// that keeps the limits. From then on searches keep every floor.
/// </summary>
internal sealed class Floors(Squad squad, CancellationToken cancel)
{
    private const int CutsMost = 400;
    private const int TurnsMost = 6;

    private readonly PlanRequest _request = squad.Request;
    private readonly Dictionary<SessionSlot, Timeline> _first = [];
    private SessionFloor[] _floors = [];
    private string[] _kits = [];

    /// <summary>Makes a time line for every session; false when nothing can be cut any more.</summary>
    public bool Open()
    {
        bool again = true;
        for (int turn = 0; again; turn++)
        {
            // A cut in one session may take something from a later one, so all are looked at until none changes.
            again = false;
            foreach (SessionSlot slot in squad.Slots)
            {
                cancel.ThrowIfCancellationRequested();
                if (turn == TurnsMost || Fit(slot) is not { } cut)
                {
                    return false;
                }

                again |= cut;
            }
        }

        Make(squad.Searches.Length);
        for (int i = 0; i < squad.Searches.Length; i++)
        {
            squad.Searches[i].StandOn(_floors, i, _kits);
            for (int s = 0; s < _floors.Length; s++)
            {
                if (_first.TryGetValue(squad.Slots[s], out Timeline? timeline))
                {
                    squad.Searches[i].PutOn(s, timeline);
                }
            }
        }

        return true;
    }

    /// <summary>
    /// Floors on which others stand already and stay; then what each athlete's plan holds finds its place beside them, or goes.
    /// False when something that must stay finds none.
    /// </summary>
    /// <param name="others">The others' time line in every session.</param>
    public bool OpenBeside(ImmutableDictionary<SessionSlot, Timeline> others)
    {
        int athletes = squad.Searches.Length;
        Make(athletes + 1);
        for (int s = 0; s < _floors.Length; s++)
        {
            var placed = others[squad.Slots[s]].Placed;
            _floors[s]
                .Put(
                    athletes,
                    new([.. placed.Select(p => FloorBlock.Of(p.Block, _kits))], [.. placed.Select(p => p.Start)])
                );
        }

        bool stand = true;
        for (int i = 0; i < athletes; i++)
        {
            squad.Searches[i].StandOn(_floors, i, _kits);
            stand &= squad.Searches[i].StandAnew();
        }

        return stand;
    }

    private void Make(int athletes)
    {
        _kits = [.. _request.Kit.Select(k => k.Id).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        int needMost = _request.Catalogue.Exercises.SelectMany(e => e.Kit).Select(k => k.Count).Append(1).Max();
        _floors = [.. squad.Slots.Select(s => new SessionFloor(Gym.Of(_request, s), _kits, needMost, athletes))];
    }

    /// <summary>What the search ended with.</summary>
    public Found Found(long bound)
    {
        long points = squad.Points;
        return new(
            points == bound ? PlanStatus.Optimal : PlanStatus.Feasible,
            points,
            bound,
            squad.Chosen,
            squad
                .Slots.Select((s, i) => (Slot: s, _floors[i].Timeline))
                .Where(t => !t.Timeline.Placed.IsEmpty)
                .ToImmutableDictionary(t => t.Slot, t => t.Timeline)
        );
    }

    /// <summary>Nothing more can be cut (all is locked): the scheduling model has the last word.</summary>
    public Found Locked(long bound)
    {
        ImmutableArray<Chosen> chosen = squad.Chosen;
        SquadRotation rotation = SquadRotation.Of(_request, chosen, Asked.All());
        if (rotation.Complete)
        {
            return new(PlanStatus.Feasible, squad.Points, bound, chosen, rotation.Timelines);
        }

        Found any = new WholeSearch(_request, Asked.All(), cancel).Any(_request.Budget.DeterministicTime * 2);
        return any.Objective is null
            ? Planning.Found.Nothing(PlanStatus.NoneFound)
            : any with
            {
                Bound = bound,
                Status = any.Objective == bound ? PlanStatus.Optimal : PlanStatus.Feasible,
            };
    }

    /// <summary>Cuts until the session has a time line: whether anything was cut; null when nothing can be.</summary>
    private bool? Fit(SessionSlot slot)
    {
        for (int cut = 0; cut < CutsMost; cut++)
        {
            ImmutableArray<Block> blocks = Blocks.Of(
                _request,
                slot,
                squad.Searches.SelectMany(s => s.ChosenIn(slot.Id))
            );
            (Timeline timeline, ImmutableArray<Block> left) = GreedyRotation.Partial(blocks, Gym.Of(_request, slot));
            if (left.IsEmpty)
            {
                _first[slot] = timeline;
                return cut > 0;
            }

            bool given = false;
            foreach (Block block in left.OrderByDescending(b => b.Seconds).Take(1 + (left.Length / 2)))
            {
                int who = squad.Athletes.Select(a => a.Athlete.Id).ToList().IndexOf(block.AthleteId);
                given |= squad.Searches[who].Cut(slot.Id, [.. block.Turns.Select(t => t.ExerciseId)]);
            }

            if (!given)
            {
                return null;
            }
        }

        return null;
    }
}
