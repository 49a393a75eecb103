using NodaTime;

namespace Jumpwright.Athletes.Tested;

/// <summary>How far back single trials go into one curve: an athlete of two months ago is another athlete (common practice).</summary>
internal static class TestWindow
{
    internal const int Days = 42;

    internal static bool Holds(LocalDate date, LocalDate day) => date <= day && date > day.PlusDays(-Days);
}
