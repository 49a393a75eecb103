using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.Landings;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Prescribing;

/// <summary>
/// Every curve that an athlete's own history allows, each inside the limits of the day; a refusal says what is missing. Each result
/// carries its formula, sources, dispute, doubt and next test.
/// </summary>
/// <param name="DropTrials">Single drop jumps.</param>
/// <param name="DropLimitM">The highest drop that rulings allow today, m.</param>
/// <param name="Drops">Drop height to train from.</param>
/// <param name="Loaded">Single loaded jumps; null when none were measured.</param>
/// <param name="LoadSpeed">Loads for the take-off velocities aimed at.</param>
/// <param name="LoadHeight">The same as heights.</param>
/// <param name="LoadPower">Loads near the best power.</param>
/// <param name="Pulls">Estimated maximum of the heavy hex-bar pull.</param>
/// <param name="ForceVelocity">Force–velocity profile from squat jumps.</param>
/// <param name="Approach">Single approach jumps with their speeds.</param>
/// <param name="RunUp">Height against run-up speed.</param>
/// <param name="Landing">Force of a landing a step above the highest measured.</param>
public sealed record AthleteCurves(
    ImmutableArray<DropJumpTrial> DropTrials,
    double DropLimitM,
    Outcome<DropCurve> Drops,
    LoadedJumps? Loaded,
    Outcome<LoadCurve> LoadSpeed,
    Outcome<LoadCurve> LoadHeight,
    Outcome<LoadCurve> LoadPower,
    Outcome<LoadVelocity> Pulls,
    Outcome<ForceVelocityProfile> ForceVelocity,
    Outcome<ApproachJumps> Approach,
    Outcome<RunUp> RunUp,
    Outcome<LandingForce> Landing
)
{
    /// <summary>From the history, the catalogue's ranges and the rulings of that day.</summary>
    /// <param name="history">Whose.</param>
    /// <param name="catalogue">The exercises.</param>
    /// <param name="rulings">Of that day.</param>
    /// <param name="day">The day.</param>
    /// <param name="kit">The squad's kit: a further test is done with the lightest that it has.</param>
    public static AthleteCurves Of(
        History history,
        Catalogue catalogue,
        ImmutableArray<Ruling> rulings,
        LocalDate day,
        ImmutableArray<KitCount> kit
    )
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentNullException.ThrowIfNull(catalogue);
        LimitBook limits = LimitBook.For(history, day);

        // The curve is drawn inside what rulings allow today; without a ruling, up to the highest of the catalogue.
        double dropLimit = rulings
            .Select(r => r.Effect)
            .OfType<DropAtMost>()
            .Select(d => d.HeightM)
            .Append(catalogue.Exercises.Max(e => e.DropRangeM?.MaxM ?? 0))
            .Min();
        ImmutableArray<DropJumpTrial> drops = DropJumps.Of(history, day);
        var loaded = LoadedJumps.Of(history, day);
        double? loadLimit = rulings.Any(r => r.Effect is NoExternalLoad) ? 0 : null;
        Refusal noLoaded = Refusal.Of(
            $"No loaded jump was measured: jumps with a light hex bar at two loads or more would give its curve."
        ) with
        {
            Brief = $"load of a jump (jumps with a light hex bar, two loads)",
        };
        (double from, double to) = loaded?.Aim(limits["load-speed-least"], limits["load-speed-most"]) ?? (0, 0);
        double? mostTest =
            loaded is not null && catalogue.Find(TestLoads.Jump) is { } jump
                ? TestLoads.MostKg(jump, history.Athlete.BodyMassKg, limits, loaded.HeaviestKg)
                : null;
        Outcome<ApproachJumps> approach = ApproachJumps.Of(history, day);
        return new AthleteCurves(
            drops,
            dropLimit,
            drops.IsEmpty
                ? Refusal.Of(
                    $"No drop jump was measured: three trials from one height are the least to begin with, from two heights to choose between."
                ) with
                {
                    Brief = $"drop height (three drop jumps from one height, better from two)",
                }
                : DropCurves.Of(new DropCurveInput(drops, dropLimit, limits["drop-contact-ceiling"])),
            loaded,
            loaded?.SpeedCurve(from, to, loadLimit, mostTest, TestLoads.LeastKg(kit)) ?? noLoaded,
            loaded?.HeightCurve(from, to, loadLimit) ?? noLoaded,
            loaded?.PowerCurve(loadLimit) ?? noLoaded,
            HexBarPulls.LineOf(history, day, limits["load-test-stale"]),
            SquatJumpLoads.ProfileOf(history, day),
            approach,
            approach.Then(jumps => jumps.Curve()),
            LandingOf(history, dropLimit, day)
        )
        {
            PullTrials = HexBarPulls.Of(history, day, limits["load-test-stale"]),
        };
    }

    /// <summary>Single timed pulls; empty when none were.</summary>
    public ImmutableArray<LoadedJump> PullTrials { get; init; } = [];

    /// <summary>Single approach jumps; empty when none were measured with their speed.</summary>
    public ImmutableArray<ApproachTrial> ApproachTrials =>
        Approach.TryGet(out ApproachJumps? jumps, out _) ? jumps.Trials : [];

    /// <summary>Everything that was computed, in the order of the report.</summary>
    public ImmutableArray<Calculators.Calculation> Computed =>
        [
            .. new Calculators.Calculation?[]
            {
                Found(Drops),
                Found(LoadSpeed),
                Found(LoadHeight),
                Found(LoadPower),
                Found(Pulls),
                Found(ForceVelocity),
                Found(RunUp),
                Found(Landing),
            }.OfType<Calculators.Calculation>(),
        ];

    /// <summary>What each curve lacks that could not be drawn.</summary>
    public ImmutableArray<string> Missing =>
        [
            .. new[]
            {
                Lack(Drops),
                Lack(LoadSpeed),
                Lack(LoadPower),
                Lack(Pulls),
                Lack(ForceVelocity),
                Lack(RunUp),
                Lack(Landing),
            }
                .OfType<string>()
                .Distinct(),
        ];

    private static string? Lack<T>(Outcome<T> outcome)
        where T : notnull => outcome.TryGet(out _, out Refusal? no) ? null : no.Sentence;

    private static T? Found<T>(Outcome<T> outcome)
        where T : Calculators.Calculation => outcome.TryGet(out T? value, out _) ? value : null;

    private static Outcome<LandingForce> LandingOf(History history, double dropLimitM, LocalDate day)
    {
        ImmutableArray<MeasuredLanding> landings = Landings.Of(history, day);
        if (landings.IsEmpty)
        {
            return Refusal.Of($"No drop landing was measured on a plate: its force is not known.") with
            {
                Brief = $"landing force (drop landings on a plate, three or more)",
            };
        }

        return history.Athlete.BodyMassKg is not { } mass
            ? Refusal.Of($"Body mass is not known: weigh the athlete.")
            : LandingForces.Of(
                new LandingInput(
                    mass,
                    landings,
                    Math.Min(landings.Max(l => l.DropM) + LandingForces.Reach.Value, dropLimitM),
                    dropLimitM
                )
            );
    }
}
