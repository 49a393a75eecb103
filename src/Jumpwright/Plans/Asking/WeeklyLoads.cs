using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Plans.Asking;

/// <summary>
/// What a week may hold: with the jumps of practices and matches, and tissue by tissue against what was done before. An
/// exercise of the log that the catalogue does not know counts as tier 1 for every tissue, since less makes the growth smaller.
/// </summary>
internal sealed class WeeklyLoads(History history, Squad squad, PlanRequest request, LimitBook limits, int perSession)
{
    private readonly IGrouping<LocalDate, SessionSlot>[] _weeks =
    [
        .. request.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date)).OrderBy(g => g.Key),
    ];

    private readonly int _growth = ContactCaps.WeeklyGrowth(history, limits, request.From);

    public ImmutableArray<OtherJumping> Other => [.. _weeks.Select(w => In(w.Key))];

    public ImmutableArray<LoadCap> Caps()
    {
        if (_weeks.Length == 0)
        {
            return [];
        }

        var caps = ImmutableArray.CreateBuilder<LoadCap>();
        int most = ContactCaps.AllJumpingPerWeek(perSession, limits);
        foreach (var week in _weeks)
        {
            OtherJumping other = In(week.Key);
            if (other.Jumps > 0)
            {
                caps.Add(
                    new(
                        "weekly-load",
                        [.. week.Select(s => s.Id)],
                        null,
                        Math.Max((int)(perSession * limits["training-always-per-week"]), most - other.Jumps),
                        $"A week may hold {most} contacts with all jumping, and always one session of jump training. {other.Says}"
                    )
                );
            }
        }

        int doneThisWeek = (int)Logged(_weeks[0].Key, request.From, null);
        if (doneThisWeek > 0)
        {
            int perWeek = ContactCaps.PerWeek(perSession, limits);
            caps.Add(
                new(
                    "weekly-load",
                    [.. _weeks[0].Select(s => s.Id)],
                    null,
                    Math.Max(0, perWeek - doneThisWeek),
                    $"{doneThisWeek} of the week's {perWeek} contacts were done before the plan begins."
                )
            );
        }

        foreach (Tissue tissue in Enum.GetValues<Tissue>())
        {
            int before = Before(tissue);
            int other = OtherLoad(_weeks[0].Key);
            int always = Always();
            int grown = ((100 + _growth) * (before + other) / 100) - other;
            caps.Add(
                new(
                    "weekly-growth",
                    [.. _weeks[0].Select(s => s.Id)],
                    tissue,
                    Math.Max(always, grown),
                    grown > always
                        ? $"{before} were logged a week lately; {_growth} % more are allowed, other jumping ({other}) counted in both."
                        : $"So much needs no week before it ({before} were logged a week lately)."
                )
            );
        }

        return caps.ToImmutable();
    }

    public IEnumerable<LoadGrowth> Growths()
    {
        for (int i = 1; i < _weeks.Length; i++)
        {
            int other = OtherLoad(_weeks[i - 1].Key);
            int now = OtherLoad(_weeks[i].Key);
            // Other jumping counts in both weeks: it adds its share of growth, and a week with more of it leaves less.
            int step = Math.Max(0, ((100 + _growth) * other / 100) - now) + (Always() / 5);
            foreach (Tissue tissue in Enum.GetValues<Tissue>())
            {
                // What was done in the first week before the plan begins is part of that week.
                int done = i == 1 ? (int)Logged(_weeks[0].Key, request.From, tissue) : 0;
                yield return new(
                    tissue,
                    [.. _weeks[i - 1].Select(s => s.Id)],
                    [.. _weeks[i].Select(s => s.Id)],
                    _growth,
                    step + ((100 + _growth) * done / 100)
                );
            }
        }
    }

    private int Always() => (int)(perSession * limits["weekly-demand-always-allowed"]);

    private OtherJumping In(LocalDate monday) => OtherJumping.In(monday, history.Athlete, squad, limits);

    private int OtherLoad(LocalDate monday) => (int)(In(monday).Jumps * limits["other-jumping-tier"]);

    /// <summary>Logged demand of a week: the last seven days, or the mean of the last four weeks where that is more.</summary>
    private int Before(Tissue tissue)
    {
        LocalDate first = request.From;
        double[] weeks =
        [
            .. Enumerable.Range(0, 4).Select(n => Logged(first.PlusDays(-7 * (n + 1)), first.PlusDays(-7 * n), tissue)),
        ];
        return (int)Math.Max(weeks[0], weeks.Average());
    }

    private double Logged(LocalDate from, LocalDate before, Tissue? tissue) =>
        history
            .Completed.Where(c => c.Date >= from && c.Date < before)
            .Sum(c =>
                (double)c.Contacts
                * (tissue is { } t ? request.Catalogue.Find(c.ExerciseId)?.Demand.GetValueOrDefault(t) ?? 1 : 1)
            );
}
