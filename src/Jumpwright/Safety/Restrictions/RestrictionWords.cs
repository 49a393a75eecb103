using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Safety.Restrictions;

/// <summary>The words of restrictions.csv and what each means.</summary>
internal static partial class RestrictionWords
{
    public const string All = "all";
    public const string StopSignLifted = "stop-sign-lifted";
    public const string OperationDischarged = "operation-discharged";

    private static readonly ImmutableDictionary<string, RulingEffect> Demands = new Dictionary<string, RulingEffect>(
        StringComparer.Ordinal
    )
    {
        ["jumps"] = new NoJumps(),
        ["single-leg-landing"] = new NoSingleLegLandings(),
        ["depth-jump"] = new NoDepthJumps(),
        ["high-intensity"] = new NoHighIntensity(),
        ["external-load"] = new NoExternalLoad(),
    }.ToImmutableDictionary(StringComparer.Ordinal);

    [GeneratedRegex("^[a-z0-9]+(?:-[a-z0-9]+)*$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Id();

    [GeneratedRegex(
        @"^drops?\s*(?:<=|≤)\s*(?<value>[0-9]+(?:\.[0-9]+)?)\s*(?<unit>m|cm)$",
        RegexOptions.CultureInvariant,
        1000
    )]
    private static partial Regex Drops();

    [GeneratedRegex(@"^contacts?\s*(?:<=|≤)\s*(?<value>[0-9]{1,4})$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Contacts();

    public static RestrictionReading Read(Restriction row, IReadOnlySet<string>? exerciseIds)
    {
        Sentence? problem = null;
        bool all = false;
        bool lifts = false;
        bool discharges = false;
        HashSet<string> allowed = new(StringComparer.Ordinal);
        List<RulingEffect> closes = [];
        HashSet<string> forbidden = new(StringComparer.Ordinal);

        foreach (string word in Clean(row.Allowed))
        {
            switch (word)
            {
                case All:
                    all = true;
                    break;
                case StopSignLifted:
                    lifts = true;
                    break;
                case OperationDischarged:
                    discharges = true;
                    break;
                default:
                    if (IsExercise(word, exerciseIds))
                    {
                        allowed.Add(word);
                    }
                    else
                    {
                        problem ??= $"the word \"{word}\" under allowed is not an exercise of the catalogue";
                    }

                    break;
            }
        }

        foreach (string word in Clean(row.Forbidden))
        {
            if (word == All)
            {
                closes.Add(
                    new NothingPlanned(
                        row.SetBy?.Trim() is { Length: > 0 } who
                            ? Sentence.Of($"{who}")
                            : Sentence.Of($"whoever set it")
                    )
                );
            }
            else if (Demands.TryGetValue(word, out RulingEffect? effect))
            {
                closes.Add(effect);
            }
            else if (IsExercise(word, exerciseIds))
            {
                forbidden.Add(word);
            }
            else
            {
                problem ??=
                    $"the word \"{word}\" under forbidden is neither an exercise of the catalogue nor a demand word";
            }
        }

        if (forbidden.Count > 0)
        {
            closes.Add(new NotExercises([.. forbidden]));
        }

        foreach (string part in Clean((row.Limit ?? "").Split(';')))
        {
            if (Limit(part) is { } effect)
            {
                closes.Add(effect);
            }
            else
            {
                problem ??= $"the limit \"{part}\" is not like \"drops <= 0.20 m\" or \"contacts <= 40\"";
            }
        }

        if (string.IsNullOrWhiteSpace(row.SetBy))
        {
            problem ??= $"it does not say who set it";
        }
        else if (string.IsNullOrWhiteSpace(row.Role))
        {
            problem ??= $"it does not say in which role {row.SetBy.Trim()} set it";
        }

        if (row.Until is { } until && until < row.From)
        {
            problem ??= $"it ends before it begins";
        }

        if (!all && !lifts && !discharges && allowed.Count == 0 && closes.Count == 0)
        {
            problem ??= $"it says neither what is allowed nor what is forbidden";
        }

        return new(row, problem, all, [.. allowed], lifts, discharges, [.. closes]);
    }

    private static IEnumerable<string> Clean(IEnumerable<string> words) =>
        words.Select(w => w.Trim().ToLowerInvariant()).Where(w => w.Length > 0);

    private static bool IsExercise(string word, IReadOnlySet<string>? exerciseIds) =>
        exerciseIds is null ? Id().IsMatch(word) : exerciseIds.Contains(word);

    private static RulingEffect? Limit(string text)
    {
        if (Drops().Match(text) is { Success: true } drop)
        {
            double value = double.Parse(drop.Groups["value"].ValueSpan, CultureInfo.InvariantCulture);
            return new DropAtMost(drop.Groups["unit"].ValueSpan.SequenceEqual("cm") ? value / 100 : value);
        }

        return Contacts().Match(text) is { Success: true } contacts
            ? new ContactsPerSessionAtMost(int.Parse(contacts.Groups["value"].ValueSpan, CultureInfo.InvariantCulture))
            : null;
    }
}
