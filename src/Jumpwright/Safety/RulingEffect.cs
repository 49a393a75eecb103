using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>What a ruling does. Rulings only ever close; none opens.</summary>
public abstract record RulingEffect
{
    /// <summary>True when the exercise, as described, is forbidden by this effect.</summary>
    public abstract bool Forbids(ExerciseFacts facts);
}
