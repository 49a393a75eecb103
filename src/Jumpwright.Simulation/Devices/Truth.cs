using System.Collections.Immutable;
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
    /// <summary>The value of that name, or null.</summary>
    public double? Find(string name) => Measures.TryGetValue(name, out double value) ? value : null;
}
