using System.Collections.Immutable;
using System.Text.Json;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>
/// Jumps of practices and matches: counted where somebody counted, else estimated from position, sport and minutes, with
/// the spread added; unknown is the cautious estimate. The rates are a house rule, no study stands behind them.
/// </summary>
/// <param name="Jumps">Of one week, spread included, rounded up.</param>
/// <param name="Says">How it was got, in one sentence.</param>
public sealed record OtherJumping(int Jumps, Sentence Says)
{
    private const string Resource = "Jumpwright.Safety.Data.other-jumping.json";

    private static readonly Lazy<ImmutableArray<Rate>> Rates = new(() =>
        [.. JsonSerializer.Deserialize<List<Rate>>(Embedded.Text(Resource), Embedded.Json)!]
    );

    /// <summary>What an athlete jumps in the seven days from that Monday beside jump training.</summary>
    public static OtherJumping In(LocalDate monday, Athlete athlete, Squad squad, LimitBook limits)
    {
        ArgumentNullException.ThrowIfNull(athlete);
        ArgumentNullException.ThrowIfNull(squad);
        ArgumentNullException.ThrowIfNull(limits);
        Fixture[] matches =
        [
            .. squad.Fixtures.Where(f => f.Date >= monday && f.Date < monday.PlusDays(7) && f.Has(athlete.Id)),
        ];
        Practice[] practices = [.. squad.Practices.Where(p => p.Has(athlete.Id))];
        if (practices.Length == 0 && matches.Length == 0)
        {
            return new(
                0,
                squad.Practices.IsEmpty
                    ? Sentence.Of($"No practice and no match is written down.")
                    : Sentence.Of(
                        $"Takes no part in practices and matches of the week of {monday:uuuu-MM-dd}, as squad.yaml says."
                    )
            );
        }

        double mean = 0;
        double square = 0;
        int counted = 0;
        bool unknown = false;
        foreach (Practice practice in practices)
        {
            if (practice.Jumps is { } jumps)
            {
                mean += jumps;
                square += Square(practice.JumpsSpread ?? Math.Sqrt(jumps));
                counted++;
                continue;
            }

            Add(practice.Minutes, practice.Sport);
        }

        foreach (Fixture _ in matches)
        {
            Add(null, squad.Practices.Select(p => p.Sport).FirstOrDefault(s => s is not null));
        }

        int all = (int)Math.Ceiling(mean + (limits["other-jumping-spread"] * Math.Sqrt(square)) - 1e-9);
        Sentence how =
            counted == practices.Length && matches.Length == 0 ? Sentence.Of($"counted")
            : unknown ? Sentence.Of($"partly unknown, so the cautious estimate")
            : Sentence.Of($"estimated from position, sport and minutes");
        Sentence trainings =
            practices.Length == 1 ? Sentence.Of($"1 practice") : Sentence.Of($"{practices.Length} practices");
        Sentence games = matches.Length == 1 ? Sentence.Of($"1 match") : Sentence.Of($"{matches.Length} matches");
        return new(
            all,
            $"{trainings} and {games} in the week of {monday:uuuu-MM-dd}: {mean:0} ± {Math.Sqrt(square):0} jumps ({how}); {all} enter the limits."
        );

        void Add(int? minutes, string? sport)
        {
            double hours = (minutes ?? limits["unknown-practice-minutes"]) / 60;
            if (RateOf(athlete.Sport, sport) is { } rate)
            {
                mean += rate.PerHour * hours;
                // One athlete's rate is the same high or low all week: spreads of practices add, they do not average out.
                square = Square(Math.Sqrt(square) + (rate.Spread * hours));
            }
            else
            {
                unknown = true;
                mean += limits["unknown-practice-jumps-per-hour"] * hours;
            }
        }
    }

    private static Rate? RateOf(string? position, string? sport) => Find(position) ?? Find(sport);

    private static Rate? Find(string? words) =>
        words is null
            ? null
            : Rates.Value.FirstOrDefault(r => words.Contains(r.Word, StringComparison.OrdinalIgnoreCase));

    private static double Square(double x) => x * x;

    private sealed record Rate(string Word, double PerHour, double Spread, string Source);
}
