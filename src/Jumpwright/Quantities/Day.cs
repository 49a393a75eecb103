using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Quantities;

/// <summary>Days as they stand in sentences, for example <c>4 Jan 2027</c>.</summary>
internal static class Day
{
    private static readonly LocalDatePattern Pattern = LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu");

    public static string Of(LocalDate date) => Pattern.Format(date);
}
