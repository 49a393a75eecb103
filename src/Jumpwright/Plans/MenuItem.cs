using System.Collections.Immutable;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>One exercise one athlete may do in one session, how, and what it is worth.</summary>
/// <param name="SessionId">Which session.</param>
/// <param name="Dose">How it would be done.</param>
/// <param name="SetPoints">
/// Objective points of the first, second, … set; never negative, never rising, one for each set the dose allows. Whole
/// numbers, so that objective and bound are exact.
/// </param>
/// <param name="Because">Why it is wished.</param>
public sealed record MenuItem(
    string SessionId,
    Dose Dose,
    ImmutableArray<int> SetPoints,
    ImmutableArray<Sentence> Because
)
{
    /// <summary>What must have been done before it opens; empty when it is open today.</summary>
    public ImmutableArray<Opening> After { get; init; } = [];

    public string ExerciseId => Dose.ExerciseId;

    /// <summary>Points of so many sets.</summary>
    public int PointsOf(int sets)
    {
        int points = 0;
        for (int set = 0; set < sets; set++)
        {
            points += SetPoints[set];
        }

        return points;
    }

    /// <summary>What so many sets ask: contacts, or contacts × tier of a tissue.</summary>
    public int LoadOf(Exercise exercise, Tissue? tissue, int sets) =>
        Dose.Contacts(sets) * (tissue is { } t ? exercise.Demand.GetValueOrDefault(t) : 1);

    /// <summary>Whole seconds of so many sets, each rounded up; rest between sets included, changing over not.</summary>
    public int SecondsOf(int sets) => sets * (int)Math.Ceiling((Dose.MinutesPerSet * 60) - 1e-6);
}
