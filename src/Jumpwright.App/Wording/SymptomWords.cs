using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using NodaTime;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>Symptoms and restrictions in plain words: site, side, when, how bad, who said so.</summary>
internal static class SymptomWords
{
    public static IEnumerable<Piece> Of(SymptomReport report)
    {
        yield return new(report.Site, IsEnglish: true);
        yield return new($", {Spoken.Of(report.Side)}; ");
        yield return Find($"symptom.kind.{report.Kind}") is { } kind
            ? new(kind)
            : new(report.Kind.Replace('-', ' '), IsEnglish: true);
        if (report.When is { Length: > 0 } when)
        {
            yield return new(" ");
            yield return Find($"symptom.when.{when}") is { } said ? new(said) : new(when, IsEnglish: true);
        }

        if (report.Score is { } score)
        {
            yield return new($", {T["symptom.of-10", ItemWords.Number(score)]}");
        }

        if (report.Tissue is { Length: > 0 } tissue)
        {
            yield return new("; ");
            yield return new(tissue, IsEnglish: true);
            if (report.NamedBy is { Length: > 0 } by)
            {
                yield return new($", {T["symptom.named-by"]} ");
                yield return new(by, IsEnglish: true);
            }
            else
            {
                yield return new($", {T["symptom.named-by-nobody"]}");
            }
        }

        if (report.Note is { Length: > 0 } note)
        {
            yield return new("; ");
            yield return new(note, IsEnglish: true);
        }

        yield return new(".");
    }

    public static IEnumerable<Piece> Of(Restriction restriction, LocalDate day, Catalogue catalogue)
    {
        yield return new($"{T["restriction.set-by"]} ");
        yield return restriction.SetBy is { Length: > 0 } who
            ? new(who, IsEnglish: true)
            : new(T["restriction.nobody"]);
        if (restriction.Role is { Length: > 0 } role)
        {
            yield return new(", ");
            yield return new(role, IsEnglish: true);
        }

        yield return new(
            "; "
                + (
                    restriction.Until is not { } until ? T["restriction.endless"]
                    : until < day ? T["restriction.expired", Dates.Short(until)]
                    : T["restriction.until", Dates.Short(until)]
                )
        );
        foreach (
            (string key, ImmutableArray<string> words) in new[]
            {
                ("restriction.allowed", restriction.Allowed),
                ("restriction.forbidden", restriction.Forbidden),
            }
        )
        {
            foreach ((string word, int index) in words.Select((w, i) => (w, i)))
            {
                yield return new(index == 0 ? $"; {T[key]} " : ", ");
                yield return Find($"restriction.word.{word}") is { } said
                    ? new(said)
                    : new(catalogue.Find(word)?.Name ?? word, IsEnglish: true);
            }
        }

        if (restriction.Limit is { Length: > 0 } limit)
        {
            yield return new($"; {T["restriction.limit"]} ");
            yield return new(limit.Replace("<=", "≤", StringComparison.Ordinal), IsEnglish: true);
        }

        if (restriction.Note is { Length: > 0 } note)
        {
            yield return new("; ");
            yield return new(note, IsEnglish: true);
        }

        yield return new(".");
    }
}
