using Jumpwright.Storage.Folders;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A fault of the squad folder at the last import.</summary>
internal sealed class ProblemRow
{
    public int Position { get; init; }

    public required string File { get; init; }

    public int? Line { get; init; }

    public ProblemWeight Weight { get; init; }

    public required string Sentence { get; init; }

    public string? AthleteId { get; init; }
}
