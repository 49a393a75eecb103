using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Wording;

/// <summary>
/// The core's sentences name days and sessions as files do; on a page they are days as people write them. The rest of a sentence
/// stays as it is, English.
/// </summary>
internal static partial class DaysSaid
{
    /// <summary><c>2027-01-04</c> becomes <c>4 Jan 2027</c>, and <c>2027-01-04-pm</c> <c>the session of 4 Jan 2027, pm</c>.</summary>
    public static string In(string sentence) =>
        FileDay()
            .Replace(
                sentence,
                found =>
                    LocalDatePattern.Iso.Parse(found.Groups["day"].Value) is { Success: true, Value: LocalDate day }
                        ? Said(Dates.Drawn(day), found.Groups["part"].Value)
                        : found.Value
            );

    private static string Said(string day, string part) => part.Length == 0 ? day : $"the session of {day}, {part}";

    [GeneratedRegex(@"(?<![\w-])(?<day>\d{4}-\d{2}-\d{2})(?:-(?<part>am|pm))?(?![\w-])", RegexOptions.ExplicitCapture)]
    private static partial Regex FileDay();
}
