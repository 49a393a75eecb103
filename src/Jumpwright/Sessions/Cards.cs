using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;

namespace Jumpwright.Sessions;

/// <summary>The room's door: a plan in, what is printed out.</summary>
public static class Cards
{
    /// <summary>One card for every athlete of every session, those with nothing planned included.</summary>
    public static ImmutableArray<SessionCard> Of(
        Plan plan,
        PlanRequest request,
        Squad squad,
        ImmutableArray<History> histories
    ) => throw new NotImplementedException();

    /// <summary>One sheet a session.</summary>
    public static ImmutableArray<CoachSheet> SheetsOf(
        Plan plan,
        PlanRequest request,
        Squad squad,
        ImmutableArray<History> histories
    ) => throw new NotImplementedException();
}
