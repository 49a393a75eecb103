using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
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
        Instant begins = BeginsAt(fixture, request);
        Instant ends = fixture.Start is null
            ? zone.AtStartOfDay(fixture.Date.PlusDays(1)).ToInstant()
            : begins + Duration.FromHours(HoursOfPlay);
        return new(fixture, begins - margin, ends + margin);
    }

    /// <summary>When a fixture begins; with its day where no start is known.</summary>
    public static Instant BeginsAt(Fixture fixture, PlanRequest request)
    {
        DateTimeZone zone = DateTimeZoneProviders.Tzdb[request.TimeZone];
        return fixture.Start is { } start
            ? zone.AtLeniently(fixture.Date.At(start)).ToInstant()
            : zone.AtStartOfDay(fixture.Date).ToInstant();
    }

    /// <summary>
    /// Hours that are missing between the end of a session and a fixture for what an exercise asks a tissue to recover; 0 when they
    /// pass, or when the session does not begin before the fixture.
    /// </summary>
    public static double RecoveryMissing(Exercise exercise, SessionSlot slot, Fixture fixture, PlanRequest request)
    {
        double needed = exercise.MostRecoveryHours * request.Limits.RecoveryShareBeforeFixture;
        if (needed <= 0)
        {
            return 0;
        }

        Instant begins = BeginsAt(fixture, request);
        double missing = needed - (begins - slot.EndUtc).TotalHours;
        return slot.StartUtc < begins && missing > 1e-9 ? missing : 0;
    }

    /// <summary>Why an exercise is not done so near to a fixture, or null where its recovery is over by then.</summary>
    public static Sentence? Unrecovered(Exercise exercise, SessionSlot slot, Fixture fixture, PlanRequest request) =>
        RecoveryMissing(exercise, slot, fixture, request) > 0
            ? Sentence.Of(
                $"After {slot.Said} its {exercise.MostRecoveryHours} h of recovery would not be over when {fixture.Name} begins on {fixture.Date:uuuu-MM-dd}."
            )
            : null;

    /// <summary>The sore tissue that a landing on the floor would load so near to a fixture; null where nothing stands against it.</summary>
    public static Tissue? SoreLanding(Exercise exercise, SessionSlot slot, Fixture fixture, AthleteRequest who) =>
        SoreBeforeFixture.Loaded(
            exercise.Facts,
            who.RulingsOn(slot.Date),
            slot.Date,
            fixture.Date,
            who.SoreLandingDaysBeforeFixture
        );

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
