using System.Collections.Immutable;

namespace Jumpwright.Calculators.Responses;

/// <summary>Training and the four numbers of the two-component model.</summary>
/// <param name="DailyLoad">Load of each day from day 0 on, arbitrary units; rest days 0.</param>
/// <param name="Day">The day asked about, counted from day 0.</param>
/// <param name="SlowDays">Time constant of what lasts, d.</param>
/// <param name="FastDays">Time constant of what tires, d.</param>
/// <param name="Gain">Weight of what lasts.</param>
/// <param name="Tiring">Weight of what tires.</param>
/// <param name="Start">Level without training.</param>
public sealed record ResponseInput(
    ImmutableArray<double> DailyLoad,
    int Day,
    double SlowDays = 42,
    double FastDays = 7,
    double Gain = 1,
    double Tiring = 2,
    double Start = 0
);
