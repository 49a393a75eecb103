using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>
/// What a row that nobody can read turns into: a restriction in a word that no rule knows. Safety closes on words it does
/// not know, so the row closes its athlete instead of vanishing.
/// </summary>
public static class Unreadable
{
    /// <summary>The word. With its spaces it can be neither an exercise's id nor any other word that a rule understands.</summary>
    public const string Word = "row that nobody can read";

    /// <summary>In force on every day that a squad can have.</summary>
    public static readonly LocalDate Always = new(1900, 1, 1);

    internal static Restriction Closing(string athlete, FolderProblem problem) =>
        new(
            athlete,
            Always,
            null,
            null,
            Side.Unknown,
            [],
            [Word],
            null,
            "whoever keeps " + problem.File,
            "keeper of the squad folder",
            problem.Sentence
        );
}
