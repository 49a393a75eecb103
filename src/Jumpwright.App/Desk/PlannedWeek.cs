using System.Collections.Immutable;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>A plan with what was asked and what is printed from it.</summary>
public sealed record PlannedWeek(
    PlanRequest Request,
    Plan Plan,
    ImmutableArray<SessionCard> Cards,
    ImmutableArray<CoachSheet> Sheets
)
{
    /// <summary>The sessions as they stand: of whoever was closed since the plan was made nothing is left in them.</summary>
    public ImmutableArray<PlannedSession> Standing
    {
        get => field.IsDefault ? Plan.Sessions : field;
        private init;
    }

    /// <summary>The same plan with the cards as they stand after something was written; sheets and turns follow.</summary>
    internal PlannedWeek After(ImmutableArray<SessionCard> cards, SquadMaterial material) =>
        this with
        {
            Cards = cards,
            Standing = Sessions.Cards.Standing(Plan, cards),
            Sheets = Sessions.Cards.SheetsOf(Plan, Request, material.Squad, material.Histories, cards),
        };

    /// <summary>When its limits were checked; what was written later was not looked at. Null where nobody wrote it down.</summary>
    public Instant? CheckedAt { get; init; }

    /// <summary>What is otherwise than in the plan before; null when there was none.</summary>
    public ImmutableArray<PlanChange>? Changes { get; init; }
}
