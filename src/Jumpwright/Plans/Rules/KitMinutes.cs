namespace Jumpwright.Plans.Rules;

/// <summary>Kit is in use no longer than its pieces are planned for, so that a rotation stays possible.</summary>
public sealed class KitMinutes : KitInUse
{
    public override string Id => "kit-minutes";
    public override string Sentence => "Kit is in use no longer than its pieces may be planned for in the session.";
    protected override bool Fresh => false;
}
