using Jumpwright.Plans;

namespace Jumpwright.Planning.Rotations;

/// <summary>What a rotation has to keep to in one session.</summary>
/// <param name="Opens">Second at which stations open.</param>
/// <param name="Closes">Second at which the session ends.</param>
/// <param name="FreshUntil">Second by which what must be done fresh has begun.</param>
/// <param name="ChangeOver">Seconds between an athlete's blocks, and before the first.</param>
/// <param name="CountOf">How many of a piece of kit there are.</param>
internal sealed record Gym(int Opens, int Closes, int FreshUntil, int ChangeOver, Func<string, int> CountOf)
{
    public static Gym Of(PlanRequest request, SessionSlot slot)
    {
        int closes = slot.Minutes * 60;
        return new(
            closes - request.UsableSeconds(slot),
            closes,
            request.FreshUntil(slot),
            request.ChangeOverSeconds,
            request.CountOf
        );
    }
}
