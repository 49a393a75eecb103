using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>At most this many contacts in a session. It forbids no exercise by itself; the planner counts.</summary>
public sealed record ContactsPerSessionAtMost(int Contacts) : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => false;
}
