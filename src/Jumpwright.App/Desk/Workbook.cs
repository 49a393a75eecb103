using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>Everything the pages show and the cards are made from, as of one day.</summary>
/// <param name="Material">What is known of the squad.</param>
/// <param name="Day">The day the decisions are for.</param>
/// <param name="Catalogue">The exercises.</param>
/// <param name="Leaves">One an athlete, in the squad's order.</param>
/// <param name="Week">The plan, or the sentence why there is none.</param>
public sealed record Workbook(
    SquadMaterial Material,
    LocalDate Day,
    Catalogue Catalogue,
    ImmutableArray<AthleteLeaf> Leaves,
    Outcome<PlannedWeek> Week
)
{
    private readonly Dictionary<string, AthleteLeaf> _byId = ById(Leaves);

    /// <summary>One an athlete, in the squad's order.</summary>
    public ImmutableArray<AthleteLeaf> Leaves
    {
        get;
        init
        {
            field = value;
            _byId = ById(value);
        }
    } = Leaves;

    /// <summary>The athlete's leaf, or null.</summary>
    public AthleteLeaf? Find(string athleteId) => _byId.GetValueOrDefault(athleteId);

    /// <summary>The plan, or null when there is none.</summary>
    public PlannedWeek? PlanOrNull => Week.TryGet(out PlannedWeek? week, out _) ? week : null;

    /// <summary>What was open to an athlete on a planned day when the plan was made, which need not be the day of the book.</summary>
    internal OpenWork OpenOn(AthleteLeaf leaf, LocalDate day) =>
        PlanOrNull?.Request is { } request
        && request.Athletes.FirstOrDefault(a => a.Athlete.Id == leaf.Athlete.Id) is { } asked
            ? new(leaf.Ladder, asked.RulingsOn(day), Catalogue, request.Kit)
            : leaf.Open;

    private static Dictionary<string, AthleteLeaf> ById(ImmutableArray<AthleteLeaf> leaves) =>
        leaves.ToDictionary(l => l.Athlete.Id, StringComparer.Ordinal);
}
