using System.Collections.Immutable;
using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Tests.Safety;

/// <summary>An adult of 70 kg who said on the day before that nothing hurts; tests change one thing at a time.</summary>
internal static class Patient
{
    internal static readonly LocalDate Today = new(2027, 1, 4);

    internal static History Well { get; } =
        new History(
            new Athlete(
                "a01",
                "Ada Test",
                new LocalDate(2000, 6, 1),
                70,
                1.75,
                null,
                TrainingLevel.Advanced,
                null,
                null
            ),
            [],
            [],
            [],
            [],
            []
        ).Felt("knee", "pain", "after", 0, 1);

    internal static History Felt(
        this History history,
        string site,
        string kind,
        string? when,
        double? score,
        int daysAgo,
        string? tissue = null,
        string? namedBy = null,
        string? note = null,
        Side side = Side.Left
    ) =>
        history with
        {
            Symptoms = history.Symptoms.Add(
                new SymptomReport("a01", Today.PlusDays(-daysAgo), site, side, tissue, namedBy, kind, when, score, note)
            ),
        };

    internal static History Restricted(
        this History history,
        string allowed = "",
        string forbidden = "",
        string? limit = null,
        string? by = "Dana Example",
        string? role = "physiotherapist",
        int fromDaysAgo = 5,
        int? untilInDays = 30,
        string? site = null,
        Side side = Side.Unknown
    ) =>
        history with
        {
            Restrictions = history.Restrictions.Add(
                new Restriction(
                    "a01",
                    Today.PlusDays(-fromDaysAgo),
                    untilInDays is { } days ? Today.PlusDays(days) : null,
                    site,
                    side,
                    Words(allowed),
                    Words(forbidden),
                    limit,
                    by,
                    role,
                    null
                )
            ),
        };

    internal static History Aged(this History history, LocalDate? born) =>
        history with
        {
            Athlete = history.Athlete with { BirthDate = born },
        };

    internal static History Weighing(this History history, double? kg) =>
        history with
        {
            Athlete = history.Athlete with { BodyMassKg = kg },
        };

    internal static History Operated(this History history, LocalDate? on) =>
        history with
        {
            Athlete = history.Athlete with { Operation = new Operation(on, "knee", Side.Left) },
        };

    internal static History Logged(this History history, double? during, double? morning, int daysAgo = 2) =>
        history with
        {
            Completed = history.Completed.Add(
                new CompletedItem(
                    "a01",
                    Today.PlusDays(-daysAgo),
                    "s",
                    "pogo-hop",
                    3,
                    10,
                    30,
                    0,
                    during,
                    morning,
                    5,
                    null,
                    null
                )
            ),
        };

    private static ImmutableArray<string> Words(string text) =>
        [.. text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
}
