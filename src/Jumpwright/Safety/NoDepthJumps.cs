using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>No depth jumps.</summary>
public sealed record NoDepthJumps : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => facts.IsDepthJump;
}
