using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Dosing;

/// <summary>
/// What a week may ask of a tissue, in contacts × tier: what was done before it, and how much more is allowed. One rule for plans and
/// for proposed tests.
/// </summary>
/// <param name="history">Whose.</param>
/// <param name="catalogue">The exercises.</param>
/// <param name="squad">Practices and matches, whose jumps count.</param>
/// <param name="limits">The limits in force.</param>
/// <param name="perSession">Contacts of a session, fewer while coming back.</param>
/// <param name="growthPct">Percent by which a week may ask for more than the one before.</param>
internal sealed class WeeklyDemand(
    History history,
    Catalogue catalogue,
    Squad squad,
    LimitBook limits,
    int perSession,
    int growthPct
)
{
    /// <summary>What any week may ask of a tissue, whatever was done before it.</summary>
    public int Always => (int)(perSession * limits["weekly-demand-always-allowed"]);

    /// <summary>Jumps of practices and matches in the week from that Monday.</summary>
    public OtherJumping In(LocalDate monday) => OtherJumping.In(monday, history.Athlete, squad, limits);

    /// <summary>The same as demand on any tissue.</summary>
    public int OtherLoad(LocalDate monday) => (int)(In(monday).Jumps * limits["other-jumping-tier"]);

    /// <summary>Contacts of jump training that the week from that Monday holds beside other jumping; null where there is none.</summary>
    public int? ContactsBeside(OtherJumping other) =>
        other.Jumps == 0
            ? null
            : Math.Max(
                (int)(perSession * limits["training-always-per-week"]),
                ContactCaps.AllJumpingPerWeek(perSession, limits) - other.Jumps
            );

    /// <summary>What growth alone allows a week that follows the one before <paramref name="first"/>.</summary>
    /// <param name="tissue">Which tissue.</param>
    /// <param name="first">Only what was logged before that day counts as done before.</param>
    /// <param name="monday">Of the week; its other jumping counts before and in it.</param>
    public int Grown(Tissue tissue, LocalDate first, LocalDate monday)
    {
        int other = OtherLoad(monday);
        return ((100 + growthPct) * (Before(tissue, first) + other) / 100) - other;
    }

    /// <summary>The most that such a week may ask.</summary>
    public int AtMost(Tissue tissue, LocalDate first, LocalDate monday) =>
        Math.Max(Always, Grown(tissue, first, monday));

    /// <summary>
    /// Logged demand of a week: the seven days before that day, or the mean of the four weeks before it where that is more. It allows the
    /// next week its share more, so what only may have been done is not in it.
    /// </summary>
    public int Before(Tissue tissue, LocalDate first)
    {
        double[] weeks =
        [
            .. Enumerable
                .Range(0, 4)
                .Select(n => Logged(first.PlusDays(-7 * (n + 1)), first.PlusDays(-7 * n), tissue, 1)),
        ];
        return (int)Math.Max(weeks[0], weeks.Average());
    }

    /// <summary>Demand from one day to before another at most: what was logged, and what may have been done beside it.</summary>
    /// <inheritdoc cref="Logged"/>
    public double AtMostDone(LocalDate from, LocalDate before, Tissue? tissue, int unknownTier) =>
        Logged(from, before, tissue, unknownTier)
        + history
            .PossiblyDone.Where(p => p.Date >= from && p.Date < before)
            .Sum(p =>
                (double)p.Contacts * (tissue is { } t ? TierOf(catalogue.Find(p.ExerciseId), t, unknownTier) : 1)
            );

    /// <summary>Logged demand from one day to before another; plain contacts where no tissue is named.</summary>
    /// <param name="from">First day.</param>
    /// <param name="before">First day that no longer counts.</param>
    /// <param name="tissue">Which tissue; null: contacts.</param>
    /// <param name="unknownTier">Tier of an exercise that the catalogue does not know.</param>
    public double Logged(LocalDate from, LocalDate before, Tissue? tissue, int unknownTier) =>
        history
            .Completed.Where(c => c.Date >= from && c.Date < before)
            .Sum(c =>
                (double)c.Contacts * (tissue is { } t ? TierOf(catalogue.Find(c.ExerciseId), t, unknownTier) : 1)
            );

    /// <summary>Demand tier of one contact on that tissue.</summary>
    public static int TierOf(Exercise? exercise, Tissue tissue, int unknownTier) =>
        exercise is null ? unknownTier : exercise.Demand.GetValueOrDefault(tissue);
}
