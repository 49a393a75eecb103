namespace Jumpwright.Safety;

/// <summary>No exercise with a contact that takes an impact or a rebound.</summary>
public sealed record NoJumps : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => facts.IsJump;
}
