using Jumpwright.Quantities;

namespace Jumpwright.Athletes;

/// <summary>A quality of jumping that training can move.</summary>
public enum Quality
{
    Landing,
    AnkleStiffness,
    Push,
    StretchShortening,
    ReactiveStrength,
    SingleLeg,
    RunUp,
}
