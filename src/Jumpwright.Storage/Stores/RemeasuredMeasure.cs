using Jumpwright.Quantities;

namespace Jumpwright.Storage.Stores;

/// <summary>How one measure would change over all trials that give it now and would give it still.</summary>
/// <param name="Name">The contract's name.</param>
/// <param name="Unit">Of all that follows.</param>
/// <param name="Compared">Trials that give it both times.</param>
/// <param name="Changed">Of these, those whose value would be another.</param>
/// <param name="Lost">Trials that give it and would give it no more.</param>
/// <param name="Gained">Trials that would give it for the first time.</param>
/// <param name="MedianChange">Middle of after − before over those that change; 0 where none does.</param>
/// <param name="WorstChange">The largest of them by size, with its sign.</param>
/// <param name="WorstWhere">The recording and trial of the largest change; null where none changes.</param>
/// <param name="MedianDoubt">Middle of the stored standard uncertainties, to hold the changes against.</param>
/// <param name="MedianDoubtAfter">The same as they would be.</param>
public sealed record RemeasuredMeasure(
    string Name,
    Unit Unit,
    int Compared,
    int Changed,
    int Lost,
    int Gained,
    double MedianChange,
    double WorstChange,
    string? WorstWhere,
    double MedianDoubt,
    double MedianDoubtAfter
);
