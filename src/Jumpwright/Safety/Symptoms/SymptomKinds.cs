using Jumpwright.Quantities;

namespace Jumpwright.Safety.Symptoms;

/// <summary>The words of the kind column of symptoms.csv.</summary>
internal static class SymptomKinds
{
    public const string Pain = "pain";
    public const string Swelling = "swelling";
    public const string Stiffness = "stiffness";
    public const string GivingWay = "giving-way";
    public const string Locking = "locking";
    public const string Numbness = "numbness";
    public const string Illness = "illness";
    public const string Other = "other";

    private static readonly string[] All = [Pain, Swelling, Stiffness, GivingWay, Locking, Numbness, Illness, Other];

    /// <summary>How sentences name a kind; a word nobody knows stands as it is written.</summary>
    public static Sentence Said(string kind) =>
        Read(kind) switch
        {
            null => $"{kind}",
            Pain => $"pain",
            Swelling => $"swelling",
            Stiffness => $"stiffness",
            GivingWay => $"giving-way",
            Locking => $"locking",
            Numbness => $"numbness",
            Illness => $"illness",
            _ => $"other",
        };

    /// <summary>The kind as it is spelled in the contract, or null where the word is not one of them.</summary>
    public static string? Read(string kind)
    {
        string word = kind.Trim().ToLowerInvariant().Replace(' ', '-').Replace('_', '-');
        return All.Contains(word, StringComparer.Ordinal) ? word : null;
    }
}
