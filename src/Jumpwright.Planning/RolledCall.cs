using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>What roll call made of a session.</summary>
/// <param name="Session">Today's session: who is here, what is left, a rotation of it.</param>
/// <param name="Request">The request with today's kit and minutes, for the judge.</param>
/// <param name="Cuts">What was taken away, and why. Nothing is ever added.</param>
public sealed record RolledCall(PlannedSession Session, PlanRequest Request, ImmutableArray<PlanChange> Cuts);
