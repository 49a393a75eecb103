using System.Globalization;
using NodaTime;

namespace Jumpwright.Quantities;

/// <summary>Writes sentences out. This one writes English in metres and kilograms; whoever speaks otherwise says so in what it overrides.</summary>
/// <remarks>
/// Formats a hole may ask for: of a sentence or words <c>capital</c> and <c>small</c> (its first letter) and <c>open</c> (without its full
/// stop); of a <see cref="Length"/> or <see cref="Mass"/> digits and unit, such as <c>0 cm</c>; of numbers their usual ones.
/// </remarks>
public class SentenceWriter : IFormatProvider, ICustomFormatter
{
    /// <summary>The writer of files, commands and stores.</summary>
    public static SentenceWriter English { get; } = new();

    /// <summary>The language, for arguments that have words of their own in it.</summary>
    public virtual string Language => "en";

    /// <summary>The units of lengths and masses.</summary>
    protected virtual UnitSystem Units => UnitSystem.Metric;

    /// <summary>The sentence in full.</summary>
    public virtual string Write(Sentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        return string.Format(
            this,
            sentence.IsPlain ? sentence.Template : TemplateOf(sentence.Template),
            [.. sentence.Arguments]
        );
    }

    object? IFormatProvider.GetFormat(Type? formatType) => formatType == typeof(ICustomFormatter) ? this : null;

    string ICustomFormatter.Format(string? format, object? arg, IFormatProvider? formatProvider) =>
        arg switch
        {
            null => "",
            // What was given a capital and stands within a sentence after all is as if it never had it.
            Sentence { Template: "{0:capital}", Arguments: [Sentence inner] } when format is "small" or "small open" =>
                Shaped(Write(inner), format),
            Sentence sentence => Shaped(Write(sentence), format),
            string words => Shaped(words, format),
            LocalDate day => DayOf(day, format),
            SaidExercise exercise => Shaped(ExerciseOf(exercise), format),
            SaidKit kit => Shaped(KitOf(kit), format),
            SaidSession session => SessionOf(session),
            SaidMeasure measure => Shaped(MeasureOf(measure), format),
            SaidMethod method => MethodOf(method),
            SaidLimit limit => LimitOf(limit),
            UnitName unit => UnitOf(unit),
            SaidRole role => RoleOf(role),
            ISaid said => Shaped(said.In(Language), format),
            DoubtedLength length => Quantity(length.ToString(Units)),
            LoadToTake load => Quantity(load.ToString(Units)),
            HeightToSet height => Quantity(height.ToString(Units)),
            Length length => Quantity(length.ToString(format, Units)),
            Mass mass => Quantity(mass.ToString(format, Units)),
            IFormattable value => value.ToString(format, Numerals.In(Language)),
            _ => arg.ToString() ?? "",
        };

    /// <summary>The template of that English in this writer's language.</summary>
    protected virtual string TemplateOf(string english) => english;

    /// <summary>An exercise's name.</summary>
    protected virtual string ExerciseOf(SaidExercise exercise) => exercise.English;

    /// <summary>Kit.</summary>
    protected virtual string KitOf(SaidKit kit) => kit.ToString();

    /// <summary>A session.</summary>
    protected virtual string SessionOf(SaidSession session) => session.Id;

    /// <summary>A length or a mass with its unit, for example <c>18.1 in</c>, where the language has another word for the unit.</summary>
    protected virtual string QuantityOf(string written) => written;

    /// <summary>A measure.</summary>
    protected virtual string MeasureOf(SaidMeasure measure) => measure.English;

    /// <summary>How a value was got.</summary>
    protected virtual string MethodOf(SaidMethod method) => method.Name;

    /// <summary>A limit.</summary>
    protected virtual string LimitOf(SaidLimit limit) => limit.Id;

    /// <summary>A role.</summary>
    protected virtual string RoleOf(SaidRole role) => role.Written;

    /// <summary>A unit's word.</summary>
    protected virtual string UnitOf(UnitName unit) => unit.Symbol;

    /// <summary>A day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="format">How files write it, or paper with or without weekday and year; null where people do in a sentence.</param>
    protected virtual string DayOf(LocalDate day, string? format) =>
        format is null ? Day.Of(day) : day.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>Words within a sentence whose first letter would be small; where nouns have capitals they keep them.</summary>
    protected virtual string Small(string words) =>
        words.Length == 0 ? words : char.ToLowerInvariant(words[0]) + words[1..];

    private string Quantity(string withPoints) => QuantityOf(Numerals.Write(withPoints, Language));

    private string Shaped(string words, string? format) =>
        format switch
        {
            null => words,
            "capital" => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..],
            "small" => Small(words),
            "open" => words.TrimEnd('.'),
            "small open" => Small(words.TrimEnd('.')),
            _ => throw new FormatException($"No words are shaped '{format}'."),
        };
}
