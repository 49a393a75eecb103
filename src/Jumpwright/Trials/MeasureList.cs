using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Collects one trial's measures, warnings and doubts; gives the measures in the order of the contract.</summary>
internal sealed class MeasureList
{
    private static readonly string[] Order =
    [
        MeasureNames.BodyWeight,
        MeasureNames.SystemWeight,
        MeasureNames.JumpHeight,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.TakeOffVelocity,
        MeasureNames.FlightTime,
        MeasureNames.ContactTime,
        MeasureNames.DropHeight,
        MeasureNames.ReactiveStrengthIndex,
        MeasureNames.ReactiveStrengthIndexModified,
        MeasureNames.TimeToTakeOff,
        MeasureNames.CountermovementDepth,
        MeasureNames.UnwantedDip,
        MeasureNames.PeakPropulsivePower,
        MeasureNames.MeanPropulsivePower,
        MeasureNames.PeakForce,
        MeasureNames.PeakLandingForce,
        MeasureNames.PeakLoadingRate,
        MeasureNames.LandingNetImpulse,
        MeasureNames.BrakingDuration,
        MeasureNames.PropulsionDuration,
        MeasureNames.VerticalStiffness,
        MeasureNames.VerticalStiffnessTimeModel,
        MeasureNames.TimeToStabilisation,
        MeasureNames.AsymmetryBrakingImpulse,
        MeasureNames.AsymmetryPropulsiveImpulse,
        MeasureNames.AsymmetryLandingImpulse,
        MeasureNames.HopsFound,
        MeasureNames.HopsCounted,
    ];

    private readonly List<Measure> _measures = [];
    private readonly List<string> _warnings = [];
    private readonly SortedSet<string> _doubtful = new(StringComparer.Ordinal);

    public void Add(string name, double value, Unit unit, double uncertainty, string method)
    {
        if (double.IsFinite(value) && double.IsFinite(uncertainty))
        {
            _measures.Add(new Measure(name, value, unit, Math.Abs(uncertainty), method));
        }
    }

    public Measure? Find(string name) => _measures.Find(m => string.Equals(m.Name, name, StringComparison.Ordinal));

    public void Warn(string sentence)
    {
        if (!_warnings.Contains(sentence))
        {
            _warnings.Add(sentence);
        }
    }

    /// <summary>Names measures that must not be decided from; the sentence says why.</summary>
    public void Doubt(string sentence, params ReadOnlySpan<string> names)
    {
        Warn(sentence);
        foreach (string name in names)
        {
            _doubtful.Add(name);
        }
    }

    /// <summary>Whether a measure was named that must not be decided from.</summary>
    public bool IsDoubtful(string name) => _doubtful.Contains(name);

    public ImmutableArray<Measure> Measures =>
        [.. _measures.OrderBy(m => Array.IndexOf(Order, m.Name) is var at && at < 0 ? int.MaxValue : at)];

    public ImmutableArray<string> Warnings => [.. _warnings];

    /// <summary>Doubts about measures that the trial does have.</summary>
    public ImmutableArray<string> Doubtful => [.. _doubtful.Where(d => Find(d) is not null)];
}
