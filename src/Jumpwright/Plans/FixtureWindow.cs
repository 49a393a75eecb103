using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>The hours round a fixture in which nothing of the top tier is planned.</summary>
/// <param name="Fixture">Which.</param>
/// <param name="From">First instant.</param>
/// <param name="Until">Last instant.</param>
public sealed record FixtureWindow(Fixture Fixture, Instant From, Instant Until)
{
    /// <summary>A fixture whose start is known is taken to last so long, h. House rule.</summary>
    public const int HoursOfPlay = 2;

    /// <summary>Round a fixture; without a start the whole local day counts as the fixture.</summary>
    public static FixtureWindow Of(Fixture fixture, PlanRequest request)
    {
        DateTimeZone zone = DateTimeZoneProviders.Tzdb[request.TimeZone];
        var margin = Duration.FromHours(request.Limits.TopTierHoursRoundFixture);
        if (fixture.Start is { } start)
        {
            Instant begins = zone.AtLeniently(fixture.Date.At(start)).ToInstant();
            return new(fixture, begins - margin, begins + Duration.FromHours(HoursOfPlay) + margin);
        }

        return new(
            fixture,
            zone.AtStartOfDay(fixture.Date).ToInstant() - margin,
            zone.AtStartOfDay(fixture.Date.PlusDays(1)).ToInstant() + margin
        );
    }

    /// <summary>Hours of the session that fall into the window.</summary>
    public double HoursWithin(SessionSlot slot)
    {
        Instant from = Instant.Max(From, slot.StartUtc);
        Instant until = Instant.Min(Until, slot.EndUtc);
        return until > from ? (until - from).TotalHours : 0;
    }

    /// <summary>True on the fixture's day and on the days before it that are kept free of high intensity.</summary>
    public static bool IsQuietDay(Fixture fixture, LocalDate day, SquadLimits limits) =>
        day <= fixture.Date && day >= fixture.Date.PlusDays(-limits.HighIntensityDaysBeforeFixture);
}
