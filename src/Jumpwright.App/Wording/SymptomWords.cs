using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using NodaTime;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>Symptoms and restrictions in plain words: site, side, when, how bad, who said so.</summary>
internal static partial class SymptomWords
{
    public static IEnumerable<Piece> Of(SymptomReport report)
    {
        yield return PlaceWords.Of(report.Site);
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
            yield return RoleWords.Of(role);
        }

        if (restriction.Site is { Length: > 0 } site)
        {
            yield return new("; ");
            yield return PlaceWords.Of(site);
            if (restriction.Side is not Side.Unknown)
            {
                yield return new($", {Spoken.Of(restriction.Side)}");
            }
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
                    : SpokenExercises.Named(catalogue, word);
            }
        }

        if (restriction.Limit is { Length: > 0 } limit)
        {
            foreach (
                string part in limit.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            )
            {
                yield return new("; ");
                yield return Limit(part);
            }
        }

        if (restriction.Note is { Length: > 0 } note)
        {
            yield return new("; ");
            yield return new(note, IsEnglish: true);
        }

        yield return new(".");
    }

    /// <summary>A limit of restrictions.csv in words; one of another shape stands as it was written, and closes.</summary>
    private static Piece Limit(string part)
    {
        Match match = Limited().Match(part);
        return !match.Success ? new(part.Replace("<=", "≤", StringComparison.Ordinal), IsEnglish: true)
            : match.Groups["contacts"].Success ? new(T["restriction.limit.contacts", match.Groups["contacts"].Value])
            : new(
                T[
                    "restriction.limit.drops",
                    new Length(
                        double.Parse(match.Groups["drop"].ValueSpan, CultureInfo.InvariantCulture)
                            / (match.Groups["unit"].ValueSpan.SequenceEqual("cm") ? 100 : 1)
                    ).ToString("0 cm", Speech.Now.Units)
                ]
            );
    }

    [GeneratedRegex(
        @"^(?:contacts?\s*(?:<=|≤)\s*(?<contacts>[0-9]{1,4})|drops?\s*(?:<=|≤)\s*(?<drop>[0-9]+(?:\.[0-9]+)?)\s*(?<unit>m|cm))$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase,
        1000
    )]
    private static partial Regex Limited();
}
