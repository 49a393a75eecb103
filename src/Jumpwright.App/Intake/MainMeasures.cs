using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.App.Intake;

/// <summary>The one or two measures by which a person sees at once whether a recording was read as what it is.</summary>
internal static class MainMeasures
{
    /// <summary>Of a jump its height and its contact; of a landing how long it took to settle, or its peak.</summary>
    public static ImmutableArray<Measure> Of(Trial trial)
    {
        Measure? height = trial.Find(MeasureNames.JumpHeight) ?? trial.Find(MeasureNames.JumpHeightFlightTime);
        Measure? contact = trial.Find(MeasureNames.ContactTime);
        Measure? landing =
            height is null && contact is null
                ? trial.Find(MeasureNames.TimeToStabilisation)
                    ?? trial.Find(MeasureNames.PeakLandingForce)
                    ?? trial.Find(MeasureNames.PeakForce)
                : null;
        return [.. new[] { height, contact, landing }.OfType<Measure>()];
    }
}
