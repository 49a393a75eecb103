using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Simulation.Devices;

/// <summary>What is exactly so in a simulated recording.</summary>
/// <param name="Events">On the recording's own clock, s.</param>
/// <param name="Measures">By the contract's names, in its units; those that the task or the cut does not allow are absent.</param>
/// <param name="Contacts">Repeated hops: each complete contact with the flight after it.</param>
public sealed record Truth(
    TrialEvents Events,
    ImmutableSortedDictionary<string, double> Measures,
    ImmutableArray<HopContact> Contacts
)
{
    /// <summary>The method of an index that says: of the height by flight time (contracts, §1).</summary>
    private const string ByFlightTime = "flight-time";

    /// <summary>The value of that name, or null.</summary>
    public double? Find(string name) => Measures.TryGetValue(name, out double value) ? value : null;

    /// <summary>
    /// What a measure should be, in its unit, or null. An index names the height that it is of: one by flight time is right where it is the index of
    /// the true flight, and two heights are never one truth.
    /// </summary>
    public double? Of(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return
            measure is { Name: MeasureNames.ReactiveStrengthIndex, Method: ByFlightTime }
            && Contacts.IsEmpty
            && Find(MeasureNames.ReactiveStrengthIndex) is not null
            ? Find(MeasureNames.JumpHeightFlightTime) / Find(MeasureNames.ContactTime)
            : Find(measure.Name);
    }
}
