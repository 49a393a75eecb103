using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Jumpwright.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Wording;

/// <summary>
/// Sentences that come back as their English words, out of the store or a file, known again by their templates, so that a page says them
/// in its language and units. What no template makes word for word stays as it was written.
/// </summary>
internal static partial class RecalledSentences
{
    private static readonly string[] Between = [", ", "; "];

    /// <summary>Those that say most first: of two that make the same words it is the one that leaves less to what fills it.</summary>
    private static readonly Lazy<ImmutableArray<Kind>> Kinds = new(() =>
        [
            .. SpokenSentences
                .AllTemplates.Distinct(StringComparer.Ordinal)
                .Select(t => new Kind(t))
                .OrderByDescending(k => k.Said)
                .ThenBy(k => k.Template, StringComparer.Ordinal),
        ]
    );

    /// <summary>The sentence that these words are; the words and no more where no template makes them.</summary>
    public static Sentence Of(string words) => Find(words) ?? Sentence.Plain(words);

    private static Sentence? Find(string words) =>
        Kinds.Value.Select(k => k.Make(words)).FirstOrDefault(s => s is not null);

    /// <summary>Several in a row that are all known, or one.</summary>
    private static Sentence? FindAll(string words)
    {
        foreach (string between in Between.Where(words.Contains))
        {
            Sentence?[] parts = [.. words.Split(between).Select(Find)];
            if (parts.All(p => p is not null))
            {
                return Sentence.Join(between, parts!);
            }
        }

        return Find(words);
    }

    [GeneratedRegex(@"\{[0-9]+(?::(?<format>[^}]*))?\}", RegexOptions.ExplicitCapture)]
    private static partial Regex Hole();

    /// <summary>A session by its id, as <see cref="Plans.SessionSlot.IdOf"/> makes it.</summary>
    [GeneratedRegex(@"\A[0-9]{4}-[0-9]{2}-[0-9]{2}-[ap]m\z")]
    private static partial Regex WrittenSession();

    /// <summary>A number, or one with its ±; a whole number reads the same in all languages.</summary>
    [GeneratedRegex(@"\A[-−]?[0-9]+\.[0-9]+(?: ± [0-9]+\.[0-9]+)?\z")]
    private static partial Regex WrittenNumber();

    /// <summary>One template, and how words are read by it.</summary>
    private sealed class Kind
    {
        private const string Number = "(-?[0-9][0-9.E+-]*)";
        private const string Anything = "(.+?)";

        /// <summary>So many letters of its own make a template that no other words are taken for.</summary>
        private const int Telling = 25;

        /// <summary>The words round the holes; one more than there are holes.</summary>
        private readonly ImmutableArray<string> _words;
        private readonly ImmutableArray<string?> _formats;
        private readonly Lazy<Regex> _pattern;

        public Kind(string template)
        {
            Template = template;
            MatchCollection holes = Hole().Matches(template);
            _words = [.. Hole().Replace(template, "\n").Split('\n').Select(Written)];
            _formats = [.. holes.Select(h => h.Groups["format"] is { Success: true } format ? format.Value : null)];
            Said = _words.Sum(w => w.Length);
            _pattern = new(() => new Regex(Pattern(), RegexOptions.NonBacktracking | RegexOptions.Singleline));
        }

        public string Template { get; }

        /// <summary>Letters that are its own.</summary>
        public int Said { get; }

        /// <summary>The sentence of this kind with these words; null where it has none.</summary>
        public Sentence? Make(string words)
        {
            if (
                words.Length < Said
                || !words.StartsWith(_words[0], StringComparison.Ordinal)
                || !words.EndsWith(_words[^1], StringComparison.Ordinal)
                || _pattern.Value.Match(words) is not { Success: true } match
            )
            {
                return null;
            }

            Sentence made = new(0, 0);
            made.AppendLiteral(_words[0]);
            for (int i = 0; i < _formats.Length; i++)
            {
                if (Filled(i, match.Groups[i + 1].Value) is not { } filled)
                {
                    return null;
                }

                if (_formats[i] is { } format)
                {
                    made.AppendFormatted(filled, format);
                }
                else
                {
                    made.AppendFormatted(filled);
                }

                made.AppendLiteral(_words[i + 1]);
            }

            return string.Equals(made.ToString(), words, StringComparison.Ordinal) ? made : null;
        }

        /// <summary>What filled a hole. A part that is shaped as a sentence is one; what stands in quotes was written by somebody and stays.</summary>
        private object? Filled(int hole, string words) =>
            _formats[hole] switch
            {
                null when _words[hole].EndsWith('\'') => words,
                null when WrittenNumber().IsMatch(words) => new SaidNumber(words),
                null when WrittenSession().IsMatch(words) => new SaidSession(words),
                null when Day(words, LocalDatePattern.Iso) is { } day => day,
                null => (object?)FindAll(words) ?? (IsName(words) ? words : null),
                "capital" or "small" or "open" or "small open" => FindAll(words),
                { } format when IsOfDays(format) => Day(words, LocalDatePattern.CreateWithInvariantCulture(format)),
                { } format when IsOfTimes(format) => Time(words, LocalTimePattern.CreateWithInvariantCulture(format)),
                { } format when UnitOf(format) is { } unit => Quantity(words.Split(' ')[0], unit),
                _ => Value(words),
            };

        /// <summary>
        /// Whether that may fill a hole without being a sentence: a word, words in a row, and with spaces in it (a file may be called so) only
        /// where so much stands round it that nobody else says that.
        /// </summary>
        private bool IsName(string words) =>
            Said >= Telling || words.Split(", ").All(w => !w.Contains(' ', StringComparison.Ordinal));

        private static bool IsOfDays(string format) => format.Contains("uuuu", StringComparison.Ordinal);

        private static bool IsOfTimes(string format) => format.StartsWith("HH", StringComparison.Ordinal);

        private static LocalDate? Day(string words, LocalDatePattern pattern) =>
            pattern.Parse(words) is { Success: true } read ? read.Value : null;

        private static LocalTime? Time(string words, LocalTimePattern pattern) =>
            pattern.Parse(words) is { Success: true } read ? read.Value : null;

        private static object? Quantity(string number, string unit) =>
            (Value(number), unit) switch
            {
                ({ } value, "kg") => new Mass(value),
                ({ } value, "m") => new Length(value),
                ({ } value, "cm") => new Length(value / 100),
                ({ } value, "mm") => new Length(value / 1000),
                _ => null,
            };

        private static double? Value(string number) =>
            double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : null;

        /// <summary>The unit that a format writes, without brackets; null where it writes a number alone.</summary>
        private static string? UnitOf(string format) =>
            format.LastIndexOf(' ') is > 0 and var at ? format[(at + 1)..].Trim('(', ')') : null;

        private static string Written(string words) =>
            words.Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal);

        private string Pattern()
        {
            var pattern = new StringBuilder("\\A").Append(Regex.Escape(_words[0]));
            for (int i = 0; i < _formats.Length; i++)
            {
                pattern.Append(
                    _formats[i] switch
                    {
                        null or "capital" or "small" or "open" or "small open" => Anything,
                        { } format when IsOfDays(format) || IsOfTimes(format) => Anything,
                        { } format when UnitOf(format) is { } unit && !format.EndsWith(')') => Number[..^1]
                            + $" {unit})",
                        _ => Number,
                    }
                );
                pattern.Append(Regex.Escape(_words[i + 1]));
            }

            return pattern.Append("\\z").ToString();
        }
    }
}
