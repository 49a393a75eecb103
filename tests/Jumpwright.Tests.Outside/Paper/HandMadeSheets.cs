using Jumpwright.Quantities;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.Tests.Outside.Paper;

/// <summary>Coach's sheets written by hand.</summary>
internal static class HandMadeSheets
{
    private const string Long = "Maximiliane-Wilhelmine von Hohenlohe-Schillingsfürst-Waldenburg";

    /// <summary>Twenty athletes, five stations, 45 minutes; three to be watched, one with nothing planned.</summary>
    public static readonly CoachSheet Twenty = Make(20);

    public static readonly CoachSheet Small = Make(3);

    private static CoachSheet Make(int people)
    {
        string[] names = [.. Enumerable.Range(1, people).Select(i => i == 2 ? Long : $"Athlete Number{i}")];
        string[] exercises = ["Snap-down", "Pogo hop", "Jump from a seat to a box", "Light hex-bar jump", "Depth jump"];
        string[] stations = ["floor", "floor", "plyo-box-1", "hex-bar-1", "drop-box-1"];
        int groups = Math.Min(5, people);
        return new CoachSheet(
            "Harbour Jumpers",
            new LocalDate(2027, 1, 5),
            "2027-01-05-pm",
            new LocalTime(17, 0),
            45,
            [
                .. names.Select(
                    (n, i) =>
                        i == 2
                            ? new CoachLine(
                                n,
                                [$"Nothing planned"],
                                0,
                                $"Stop sign on 2027-01-03: see a clinician first."
                            )
                            : new CoachLine(
                                n,
                                [
                                    $"Snap-down 2 × 5",
                                    $"Pogo hop 3 × 10",
                                    $"Jump from a seat to a box 3 × 3, land on a box of 40 cm",
                                    $"Depth jump 3 × 5, step off 30 cm",
                                ],
                                79,
                                i % 7 == 1 ? Sentence.Of($"15 years old on 2027-01-05: no depth jumps.") : null
                            )
                ),
            ],
            [
                .. Enumerable
                    .Range(0, 5)
                    .SelectMany(station =>
                        Enumerable
                            .Range(0, groups)
                            .Select(group => new CoachStation(
                                $"{stations[station]}",
                                $"{exercises[station]}",
                                5 + (8 * ((station + group) % 5)),
                                5 + (8 * ((station + group) % 5)) + (station % 2 == 0 ? 8 : 3),
                                [.. names.Where((_, i) => i % groups == group)]
                            ))
                    ),
            ],
            [
                $"Overridden until 2027-01-20 by B. Hale: contacts-per-week (training camp).",
                $"Training advice, not medical advice. Local rules and licensed practice come first.",
            ],
            $"Made by Jumpwright 0.1.0: plan from {new LocalDate(2027, 1, 4)}, session on {new LocalDate(2027, 1, 5)} at {new LocalTime(17, 0):HH:mm}"
        );
    }
}
