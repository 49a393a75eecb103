namespace Jumpwright.Safety;

/// <summary>No drop higher than this, m. A depth jump whose height is not known is forbidden: unknown closes.</summary>
public sealed record DropAtMost(double HeightM) : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) =>
        facts.DropHeightM is { } h ? !(h <= HeightM + 1e-9) : facts.IsDepthJump;
}
