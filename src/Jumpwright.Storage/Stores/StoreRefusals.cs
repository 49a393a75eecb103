using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Storage.Stores;

/// <summary>The sentences with which the store refuses.</summary>
internal static class StoreRefusals
{
    public static Refusal NotAStore(string path) =>
        new($"'{path}' is no store of this program and was left as it is: give another path.");

    public static Refusal Newer(string path) =>
        new(
            $"'{path}' was written by a newer version of this program and was left as it is: "
                + "use that version, or give another path and import the squad folder again."
        );

    public static Refusal CannotOpen(string path, string why) =>
        new($"'{path}' can't be opened ({why}): check the path, its permissions, and that no other program holds it.");

    public static Refusal Empty() => new("The store holds no squad yet: import a squad folder first.");

    public static Refusal AnotherSquad(string stored, string folder) =>
        new(
            $"The store holds the squad '{stored}', the folder is of '{folder}': "
                + "give another store, since a store holds one squad."
        );

    public static Refusal ImportRunning() =>
        new("Another import into this store is running: wait until it has ended, then import again.");

    public static Refusal NoRaw(string sha256) => new($"The store holds no bytes with the SHA-256 {sha256}.");

    public static Refusal Damaged(string sha256) =>
        new($"The bytes with the SHA-256 {sha256} are damaged in the store: import the squad folder into a new store.");

    public static Refusal TooLarge(string file, long bytes) =>
        RefusedFor.TooLong.Refuse(
            $"{file} is {bytes / (1024 * 1024)} MiB long, no recording of a jump is: "
                + $"cut out the jump and export it again. It was not stored."
        );

    public static Refusal CannotRead(string file, string why) =>
        RefusedFor.NotThere.Refuse(
            $"{file} can't be opened ({why}): close it in other programs, check its permissions, and import again."
        );

    public static Refusal Changed(string file) =>
        RefusedFor.NotThere.Refuse(
            $"{file} changed while it was imported: wait until the device has written it, then import again."
        );

    public static Refusal Fault(string file, string what) =>
        RefusedFor.OwnFault.Refuse(
            $"{file} could not be measured because of a fault in this program ({what}): keep the file and report it."
        );

    public static Refusal NotEmpty(string folder) =>
        new($"'{folder}' is not empty: give a new folder, so that nothing there is overwritten.");

    public static Refusal LeadsOut(string file) =>
        new(
            $"The store names a file '{file}' that leads out of a folder: it was changed by hand; nothing more is written."
        );

    public static Refusal NoAthlete(string id) => new($"The store holds nothing of an athlete '{id}': check the id.");
}
