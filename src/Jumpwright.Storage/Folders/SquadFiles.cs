using Jumpwright.Quantities;

namespace Jumpwright.Storage.Folders;

/// <summary>The bytes of a squad's own files, read once, so that what is kept is what was understood.</summary>
/// <param name="FolderName">What to call the squad if squad.yaml does not say.</param>
/// <param name="Bytes">Content by the names of <see cref="SquadTables.All"/>.</param>
/// <param name="Problems">What was found while opening them.</param>
internal sealed record SquadFiles(
    string FolderName,
    IReadOnlyDictionary<string, ReadOnlyMemory<byte>> Bytes,
    IReadOnlyList<FolderProblem> Problems
)
{
    public Outcome<SquadFolder> Read() => SquadFolderReader.ReadFiles(FolderName, Bytes, Problems);
}
