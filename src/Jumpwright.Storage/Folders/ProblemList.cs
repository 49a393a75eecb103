namespace Jumpwright.Storage.Folders;

/// <summary>Collects the problems of a reading; the sentence always begins with file and line.</summary>
internal sealed class ProblemList : List<FolderProblem>
{
    public FolderProblem Add(string file, int? line, ProblemWeight weight, string what, string? athlete = null)
    {
        string where = line is null ? file : $"{file} line {line}";
        var problem = new FolderProblem(file, line, weight, $"{where}: {what}", athlete);
        Add(problem);
        return problem;
    }
}
