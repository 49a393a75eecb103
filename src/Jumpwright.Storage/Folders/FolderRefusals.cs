using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Storage.Folders;

/// <summary>The sentences with which a folder or a listed recording is refused.</summary>
internal static class FolderRefusals
{
    public static Refusal NoFolder(string path) => Refusal.Of($"There is no folder '{path}': check the path.");

    public static Refusal NotASquad(string path) =>
        Refusal.Of(
            $"'{path}' is no squad folder: it holds neither {SquadTables.Squad} nor {SquadTables.Athletes}; "
                + $"give the folder that holds them."
        );

    public static Refusal MissingRecording(ManifestRow row) =>
        RefusedFor.NotThere.Refuse(
            $"{SquadTables.Trials} line {row.Line} lists '{row.File}', but there is no such file: "
                + $"put it there, or take the row out."
        );
}
