using System.Collections.Immutable;

namespace Jumpwright.Planning.Rows;

/// <summary>Items that are proven not to fit on one time line: at least one of them is left out or has fewer sets.</summary>
internal static class CutRows
{
    public static void Add(SquadModel squad)
    {
        foreach (ImmutableArray<Chosen> cut in squad.Scope.Cuts)
        {
            squad.Model.AddBoolOr(
                cut.Select(c => squad.Find(c.Who.Athlete.Id, c.Slot.Id, c.Exercise.Id)!.AtLeast(c.Sets).Not()).ToArray()
            );
        }
    }
}
