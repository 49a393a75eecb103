using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Safety;

/// <summary>Days as they stand in sentences: ISO 8601.</summary>
internal static class Day
{
    public static string Of(LocalDate date) => LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu").Format(date);
}
