using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Prescribing.Proposals;
using NodaTime;

namespace Jumpwright.Tests.Prescribing;

/// <summary>A squad drawn at random, with what is planned for each of its athletes.</summary>
/// <param name="Squad">Kit, fixtures and practices.</param>
/// <param name="Athletes">Who, and what they did.</param>
/// <param name="Planned">What is planned and not logged, for everyone of them alike.</param>
/// <param name="Day">The day that is looked at.</param>
internal sealed record DrawnSquad(
    Squad Squad,
    ImmutableArray<History> Athletes,
    ImmutableArray<PlannedContacts> Planned,
    LocalDate Day
)
{
    /// <summary>The same some days later, so that every weekday is looked at.</summary>
    internal DrawnSquad Later(int days) =>
        new(
            Squad with
            {
                Fixtures = [.. Squad.Fixtures.Select(f => f with { Date = f.Date.PlusDays(days) })],
            },
            [
                .. Athletes.Select(h =>
                    h with
                    {
                        Trials =
                        [
                            .. h.Trials.Select(t =>
                                t with
                                {
                                    Date = t.Date.PlusDays(days),
                                    Labels = t.Labels with { Date = t.Date.PlusDays(days) },
                                }
                            ),
                        ],
                        Screens = [.. h.Screens.Select(s => s with { Date = s.Date.PlusDays(days) })],
                        Symptoms = [.. h.Symptoms.Select(s => s with { Date = s.Date.PlusDays(days) })],
                        Restrictions =
                        [
                            .. h.Restrictions.Select(r =>
                                r with
                                {
                                    From = r.From.PlusDays(days),
                                    Until = r.Until?.PlusDays(days),
                                }
                            ),
                        ],
                        Completed = [.. h.Completed.Select(c => c with { Date = c.Date.PlusDays(days) })],
                    }
                ),
            ],
            [.. Planned.Select(p => p with { Date = p.Date.PlusDays(days) })],
            Day.PlusDays(days)
        );
}
