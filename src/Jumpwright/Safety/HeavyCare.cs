using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>
/// Many contacts of a heavy athlete as a prompt for care. It closes nothing: the handbook caps the drop of heavy athletes
/// (<see cref="Rules.HeavyAthleteDrops"/>), and nothing published is known that counts their contacts.
/// </summary>
public static class HeavyCare
{
    /// <summary>A sentence for the coach's sheet, or null when there is nothing to say.</summary>
    public static Sentence? For(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        double heavyKg = LimitBook.For(history, day)["heavy-athlete"];
        return history.Athlete.BodyMassKg is { } kg && kg > heavyKg
            ? Sentence.Of(
                $"Body mass {new Mass(kg):0.# kg}, over {new Mass(heavyKg):0 kg}: the bands of contacts by level do not fall with it, since no published number is known. Look at how landings are taken in the last sets, and rather do less."
            )
            : null;
    }
}
