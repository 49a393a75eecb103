using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>What is said where kit would be in use for longer than there is of it.</summary>
public static class KitShort
{
    /// <summary>One sentence.</summary>
    /// <param name="kitId">The kit.</param>
    /// <param name="slot">The session.</param>
    /// <param name="wantedS">Seconds that would be used, all pieces together.</param>
    /// <param name="mostS">Seconds there are.</param>
    /// <param name="request">Knows how many pieces there are.</param>
    /// <param name="fresh">Whether only work that must be done fresh is meant.</param>
    public static Sentence Sentence(
        string kitId,
        SessionSlot slot,
        int wantedS,
        int mostS,
        PlanRequest request,
        bool fresh
    )
    {
        ArgumentNullException.ThrowIfNull(kitId);
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentNullException.ThrowIfNull(request);
        int count = request.CountOf(kitId);
        SaidKit kit = new(kitId);
        Sentence needed = fresh
            ? Quantities.Sentence.Of(
                $"{kit:capital}, work to be done fresh: {wantedS / 60.0:0.#} min are needed in {slot.Said}"
            )
            : Quantities.Sentence.Of($"{kit:capital}: {wantedS / 60.0:0.#} min are needed in {slot.Said}");
        return count == 1
            ? Quantities.Sentence.Of($"{needed}, {mostS / 60.0:0.#} min are there.")
            : Quantities.Sentence.Of($"{needed}, {mostS / 60.0:0.#} min are there with all {count} in use.");
    }
}
