using Jumpwright.App.Desk;
using Jumpwright.Safety;

namespace Jumpwright.App.Wording;

/// <summary>One sentence for one athlete.</summary>
internal static class Sentences
{
    /// <summary>What stands first: a ruling that leaves nothing to plan; else what limits them and how sure that is.</summary>
    public static string Of(AthleteLeaf leaf) =>
        leaf.Rulings.FirstOrDefault(r => r.Effect is NothingPlanned) is { } closed
            ? $"Nothing planned. {closed.Because}"
            : leaf.Profile.Summary;
}
