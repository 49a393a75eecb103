namespace Jumpwright.Plans.Rules;

/// <summary>Kit is in use by work that must be done fresh no longer than the young part of the session lets it.</summary>
public sealed class FreshKitMinutes : KitInUse
{
    public override string Id => "fresh-kit-minutes";
    public override string Sentence =>
        "Work that must be done fresh uses kit no longer than the young part of the session lets it.";
    protected override bool Fresh => true;
}
