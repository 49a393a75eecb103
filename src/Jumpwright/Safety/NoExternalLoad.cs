using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>No bar, band or other load.</summary>
public sealed record NoExternalLoad : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => facts.ExternalLoad;
}
