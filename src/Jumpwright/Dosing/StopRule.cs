using Jumpwright.Quantities;

namespace Jumpwright.Dosing;

/// <summary>When to stop, as data; the card's sentence is made from it.</summary>
/// <param name="HeightLossPct">Stop when height has fallen by this much, %; null where height is not the aim.</param>
/// <param name="ContactGainPct">Stop when contact has grown by this much, %; null where contact is not the aim.</param>
/// <param name="LandingFaults">Stop at this many landing faults; null where nothing lands.</param>
/// <param name="PainDuringAbove">Stop when pain during is above this, of 10.</param>
/// <param name="PainSiteNew">Stop when pain comes to a new place.</param>
public sealed record StopRule(
    double? HeightLossPct,
    double? ContactGainPct,
    int? LandingFaults,
    double PainDuringAbove,
    bool PainSiteNew
)
{
    /// <summary>The rule as one sentence for the card.</summary>
    public Sentence Sentence() => $"Stop when {When()}.";

    /// <summary>When to stop, as the rest of a sentence.</summary>
    public Sentence When()
    {
        List<Sentence> when = [];
        if (HeightLossPct is { } height)
        {
            when.Add($"you jump {height:0.#} % lower");
        }

        if (ContactGainPct is { } contact)
        {
            when.Add($"contact gets {contact:0.#} % longer");
        }

        if (LandingFaults is { } faults)
        {
            when.Add(
                faults == 1
                    ? Quantities.Sentence.Of($"a landing goes wrong")
                    : Quantities.Sentence.Of($"{faults} landings go wrong")
            );
        }

        if (PainDuringAbove <= 0)
        {
            when.Add($"anything hurts");
        }
        else
        {
            when.Add($"pain is above {PainDuringAbove:0.#} of 10");
        }

        if (PainSiteNew && PainDuringAbove > 0)
        {
            when.Add($"it hurts in a new place");
        }

        Sentence last = when[^1];
        return when.Count == 1
            ? last
            : Quantities.Sentence.Of($"{Quantities.Sentence.Join(", ", when[..^1])} or {last}");
    }
}
