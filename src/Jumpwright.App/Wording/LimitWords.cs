using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>Limits and rules by the names people have for them. A limit of a tissue or of a piece of kit is named with it.</summary>
internal static class LimitWords
{
    private static readonly string[] OfTissues = ["recovery-hours", "weekly-growth"];
    private static readonly string[] OfKit = ["fresh-kit-minutes", "kit-minutes"];

    /// <summary>A limit's name; one that has none in the page's language stands as its id reads, in English.</summary>
    public static Piece Of(string id) =>
        TextBook.Find($"limit.{id}") is { } said ? new(said)
        : Part(OfTissues, id) is var (whole, tissue)
        && Enum.TryParse(tissue, ignoreCase: true, out Tissue named)
        && TextBook.Find($"limit.{whole}") is { } ofTissue
            ? new($"{ofTissue}, {Spoken.Of(named)}")
        : Part(OfKit, id) is var (minutes, kit)
        && TextBook.Find($"station.{kit}") is { } piece
        && TextBook.Find($"limit.{minutes}") is { } ofKit
            ? new($"{ofKit}, {piece}")
        : new(id.Replace('-', ' '), IsEnglish: true);

    private static (string Whole, string Part)? Part(string[] families, string id) =>
        families.FirstOrDefault(f => id.StartsWith(f + "-", StringComparison.Ordinal)) is { } family
            ? (family, id[(family.Length + 1)..])
            : null;
}
