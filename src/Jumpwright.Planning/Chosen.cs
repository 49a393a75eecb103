using Jumpwright.Exercises;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>An entry of a menu that a solution does, and with how many sets.</summary>
internal sealed record Chosen(AthleteRequest Who, SessionSlot Slot, MenuItem Menu, Exercise Exercise, int Sets)
{
    public int Phase => OrderOfWork.PhaseOf(Exercise, Menu.Dose.DropHeightM);
}
