using System.Collections.Immutable;
using Jumpwright.Dosing;
using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>One exercise of one athlete in one session, and why.</summary>
/// <param name="Dose">How it is done.</param>
/// <param name="Sets">Sets chosen by the planner.</param>
/// <param name="Pair">Id shared by the items of a contrast pair; null otherwise.</param>
/// <param name="PairRole">heavy or light within a pair; null otherwise.</param>
/// <param name="RestInPairS">Rest between the two, s.</param>
/// <param name="Because">Reasons, most important first.</param>
public sealed record PlannedItem(
    Dose Dose,
    int Sets,
    string? Pair,
    string? PairRole,
    int? RestInPairS,
    ImmutableArray<Sentence> Because
)
{
    public int Contacts => Dose.Contacts(Sets);
}
