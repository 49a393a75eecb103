using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>What an exercise is for, in short: the first clause, as a sentence. A hand-held card has no room for more; the catalogue keeps the whole.</summary>
internal sealed record ExercisePurpose(Exercise Exercise) : ISaid
{
    public string In(string language)
    {
        string purpose = Wordings.Of(Exercise, language).Purpose;
        int end = purpose.Length;
        foreach (string mark in (string[])[": ", "; ", ". "])
        {
            int at = purpose.IndexOf(mark, StringComparison.Ordinal);
            end = at > 0 ? Math.Min(end, at) : end;
        }

        return purpose[..end].TrimEnd('.') + ".";
    }
}
