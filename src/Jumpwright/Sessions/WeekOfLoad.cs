using NodaTime;

namespace Jumpwright.Sessions;

/// <summary>A week of session-RPE load (effort 0 to 10 times minutes; Foster 2001).</summary>
/// <param name="Monday">The week's Monday.</param>
/// <param name="Load">Sum over the week, in effort × minutes; days without work count as 0.</param>
/// <param name="Monotony">
/// Mean daily load over its standard deviation; null when all days are alike, which is undefined and not infinite, and while the week is not
/// over: days to come are not days without work.
/// </param>
/// <param name="Strain">Load × monotony; null with it.</param>
/// <param name="StandardDeviation">Which one: the sample's (divided by n − 1) or the population's (by n); both are in use.</param>
/// <param name="WithoutMinutes">Sessions that were logged without effort or minutes and so are not in it.</param>
/// <param name="IsOver">False while days of it are still to come.</param>
public sealed record WeekOfLoad(
    LocalDate Monday,
    double Load,
    double? Monotony,
    double? Strain,
    string StandardDeviation,
    int WithoutMinutes,
    bool IsOver
);
