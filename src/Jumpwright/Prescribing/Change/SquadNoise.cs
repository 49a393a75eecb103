using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Prescribing.Change;

/// <summary>What a squad's own repeated trials say of a measure's noise, pulled towards the published value while they are few.</summary>
/// <param name="Key">Which trend; the limb and condition of the squad's trends that went in.</param>
/// <param name="Athletes">Athletes with it.</param>
/// <param name="TypicalError">Trial-to-trial SD in the measure's unit, shrunk.</param>
/// <param name="TypicalErrorPct">The same in % of the mean: the CV.</param>
/// <param name="PublishedPct">The published or house value it was pulled to, %.</param>
/// <param name="DegreesOfFreedom">Of the squad's own trials.</param>
/// <param name="BetweenSd">SD between athletes; null with fewer than five.</param>
/// <param name="IntraclassCorrelationOneWay">ICC(1,1) by variance components; null with fewer than five athletes.</param>
/// <param name="SmallestWorthwhile">0.2 of the SD between athletes, or 2 % of the mean (house rule) with fewer than five.</param>
/// <param name="SmallestWorthwhileSource">Which of the two.</param>
/// <param name="DetectableChange">1.96 √2 typical error: of two single trials, 95 %.</param>
/// <param name="Prior">Where the belief about each athlete's level starts.</param>
/// <param name="Spread">How widely the squad's surprises spread.</param>
public sealed record SquadNoise(
    SeriesKey Key,
    int Athletes,
    double TypicalError,
    double TypicalErrorPct,
    double PublishedPct,
    int DegreesOfFreedom,
    double? BetweenSd,
    double? IntraclassCorrelationOneWay,
    double SmallestWorthwhile,
    Source SmallestWorthwhileSource,
    double DetectableChange,
    LevelPrior Prior,
    double Spread
);
