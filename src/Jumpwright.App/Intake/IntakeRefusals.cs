using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.App.Intake;

/// <summary>Every sentence with which opening a recording refuses.</summary>
internal static class IntakeRefusals
{
    public static Refusal Unreadable(string file) =>
        RefusedFor.NotThere.Refuse($"{file} can't be read: check that it is there.");

    public static Refusal TooLarge(string file) =>
        RefusedFor.TooLong.Refuse(
            $"{file} is larger than 256 MiB, too large for a recording of a jump: cut out the jump and export it again."
        );

    public static Refusal Closed(string file) =>
        RefusedFor.NotThere.Refuse($"{file} can't be opened: close it in other programs and check its permissions.");

    public static Refusal Growing(string file) =>
        RefusedFor.NotThere.Refuse($"{file} grows while it is read: wait until the device has written it.");

    public static Refusal OwnFault(string file, string fault) =>
        RefusedFor.OwnFault.Refuse(
            $"{file} could not be measured because of a fault in this program ({fault}): keep the file and report it."
        );
}
