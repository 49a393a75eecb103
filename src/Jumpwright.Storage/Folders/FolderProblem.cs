namespace Jumpwright.Storage.Folders;

/// <summary>One fault of a squad folder, as a sentence for the person who keeps it.</summary>
/// <param name="File">The file, relative to the folder.</param>
/// <param name="Line">Line in the file, from 1; null when it concerns the whole file.</param>
/// <param name="Weight">What it does until corrected.</param>
/// <param name="Sentence">File, line, what is wrong and what to do.</param>
/// <param name="AthleteId">Whose row it is, when that can be read.</param>
public sealed record FolderProblem(
    string File,
    int? Line,
    ProblemWeight Weight,
    string Sentence,
    string? AthleteId = null
)
{
    public override string ToString() => Sentence;
}
