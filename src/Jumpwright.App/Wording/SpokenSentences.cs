using System.Collections.Frozen;
using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Microsoft.AspNetCore.Components;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Wording;

/// <summary>
/// The core's sentences in the language and units of the request. Their other languages stand in <c>CoreSentences.*.resx</c>, by the English
/// template; a sentence with a part that has no words there stays English as a whole, and says so.
/// </summary>
internal sealed partial class SpokenSentences : SentenceWriter
{
    private const string Own = "en";

    private static readonly FrozenDictionary<string, ResourceManager> Books = TextBook
        .Languages.Where(l => l != Own)
        .ToFrozenDictionary(
            l => l,
            l => new ResourceManager("Jumpwright.App.Wording.CoreSentences." + l, typeof(SpokenSentences).Assembly),
            StringComparer.Ordinal
        );

    private readonly ResourceManager? _book;
    private readonly Speech _speech;

    private SpokenSentences(Speech speech)
    {
        _speech = speech;
        _book = Books.GetValueOrDefault(speech.Language);
    }

    /// <summary>Writes as the request speaks, for what is drawn or printed: a sentence without words in its language stays English as a whole.</summary>
    public static SentenceWriter Writer => new SpokenSentences(Speech.Now);

    public override string Language => _speech.Language;

    protected override UnitSystem Units => _speech.Units;

    /// <summary>The sentence, and whether it stayed English.</summary>
    public static Piece Of(Sentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        SpokenSentences writer = new(Speech.Now);
        return new(writer.Write(sentence), IsEnglish: !writer.Knows(sentence));
    }

    public override string Write(Sentence sentence) =>
        Knows(sentence) ? base.Write(sentence) : new SpokenSentences(_speech with { Language = Own }).Write(sentence);

    /// <summary>The sentence alone, where its language is said beside it or there is no room to say it.</summary>
    public static string Text(Sentence sentence) => Of(sentence).Text;

    /// <summary>The sentence for a page, with its language where that is not the page's.</summary>
    public static MarkupString Marked(Sentence sentence) => Piece.Marked([Of(sentence)]);

    /// <summary>Several in a row.</summary>
    public static MarkupString Marked(IEnumerable<Sentence> sentences) => Marked(Sentence.Join(" ", sentences));

    /// <summary>The words of a template in that language, or null; all templates where no word stands outside of the holes are the same in all.</summary>
    public static string? TemplateIn(string language, string english) =>
        language == Own || !Words().IsMatch(Hole().Replace(english, ""))
            ? english
            : Books.GetValueOrDefault(language)?.GetString(english, CultureInfo.InvariantCulture);

    /// <summary>All English templates that have words in another language, once for each.</summary>
    public static IEnumerable<string> AllTemplates => Books.Keys.SelectMany(Templates);

    /// <summary>All English templates that have words in that language.</summary>
    public static IEnumerable<string> Templates(string language)
    {
        ResourceSet all = Books[language].GetResourceSet(CultureInfo.InvariantCulture, true, false)!;
        foreach (System.Collections.DictionaryEntry entry in all)
        {
            yield return (string)entry.Key;
        }
    }

    protected override string TemplateOf(string english)
    {
        string template = TemplateIn(Language, english) ?? english;
        return Units == UnitSystem.Metric
            ? template
            : OutsideHoles().Replace(template, m => ReadersUnits.In(m.Value, _speech));
    }

    /// <summary>By its name, where the sentence has its id too: ids are for files.</summary>
    protected override string ExerciseOf(SaidExercise exercise) =>
        _speech.Catalogue.Find(exercise.Id) is { } known
        && (exercise.English == known.Name || exercise.English.Replace(' ', '-') == exercise.Id)
            ? Wordings.Of(known, Language).Name
            : exercise.English;

    protected override string KitOf(SaidKit kit) => TextBook.Of(Language, $"station.{kit.Id}") ?? kit.ToString();

    protected override string SessionOf(SaidSession session) =>
        session.Id.Split('-') is [_, _, _, var part]
        && LocalDatePattern.Iso.Parse(session.Id[..^(part.Length + 1)]) is { Success: true, Value: var day }
        && TextBook.Of(Language, $"said.session.{part}") is { } said
            ? string.Format(CultureInfo.InvariantCulture, said, DayOf(day, null))
            : session.Id;

    protected override string QuantityOf(string written) =>
        written.LastIndexOf(' ') is > 0 and var at && TextBook.Of(Language, $"unit.{written[(at + 1)..]}") is { } unit
            ? written[..(at + 1)] + unit
            : written;

    protected override string LimitOf(SaidLimit limit) =>
        LimitNames.Of(limit.Id) is var name && Knows(name) ? Write(name) : limit.Id;

    protected override string RoleOf(SaidRole role) => RoleWords.In(Language, role.Written) ?? role.Written;

    protected override string UnitOf(UnitName unit) => TextBook.Of(Language, $"unit.{unit.Symbol}") ?? unit.Symbol;

    protected override string MeasureOf(SaidMeasure measure) =>
        Language == Own ? measure.English : TextBook.Of(Language, $"measure.{measure.Name}") ?? measure.English;

    protected override string DayOf(LocalDate day, string? format) => Dates.In(Language, day, format);

    /// <summary>In English as files name it.</summary>
    protected override string MethodOf(SaidMethod method) =>
        (Language == Own ? null : MeasureWords.MethodIn(Language, method.Name)) ?? method.Name;

    protected override string Small(string words) => Language == Own ? base.Small(words) : words;

    private bool Knows(Sentence sentence) =>
        _book is null
        || (
            !sentence.IsPlain
            && TemplateIn(Language, sentence.Template) is not null
            && sentence.Arguments.OfType<Sentence>().All(Knows)
            && sentence.Arguments.OfType<SaidMethod>().All(m => MeasureWords.MethodIn(Language, m.Name) is not null)
        );

    [GeneratedRegex(@"\{\d+(?::[^}]*)?\}")]
    private static partial Regex Hole();

    [GeneratedRegex(@"(?<=^|\})[^{}]+(?=\{|$)")]
    private static partial Regex OutsideHoles();

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Words();
}
