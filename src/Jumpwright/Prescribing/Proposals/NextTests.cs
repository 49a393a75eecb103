using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Exercises;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>
/// Every test that would sharpen an athlete's picture, each put through the same gate. What guards health comes first, then the
/// curves, then qualities that nobody tested. Each offer is counted before the next is asked for, so that all of them together
/// fit into the day.
/// </summary>
public static class NextTests
{
    private const int Trials = CurveNumbers.TrialsOfATest;

    /// <summary>Hops in a row, of which the mean contact is taken.</summary>
    private const int Hops = 10;

    /// <summary>Offers and refusals, in order.</summary>
    public static ImmutableArray<TestOffer> For(
        History history,
        Profile profile,
        TestGate gate,
        Catalogue catalogue,
        AthleteCurves curves,
        LocalDate day
    )
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(gate);
        ArgumentNullException.ThrowIfNull(curves);
        var offers = ImmutableArray.CreateBuilder<TestOffer>();
        foreach (
            (Sentence question, Func<TestGate, Outcome<TestProposal>> ask) in Questions(
                history,
                profile,
                catalogue,
                curves,
                day
            )
        )
        {
            Outcome<TestProposal> test = ask(gate);
            offers.Add(new TestOffer(question, test));
            if (test.TryGet(out TestProposal? offered, out _))
            {
                gate = gate.After(offered);
            }
        }

        return offers.ToImmutable();
    }

    private static IEnumerable<(Sentence, Func<TestGate, Outcome<TestProposal>>)> Questions(
        History history,
        Profile profile,
        Catalogue catalogue,
        AthleteCurves curves,
        LocalDate day
    )
    {
        string id = history.Athlete.Id;
        foreach (Quality quality in (Quality[])[Quality.Landing, Quality.SingleLeg])
        {
            if (Open(profile, quality) is { } finding)
            {
                yield return (QualityNames.Of(quality), gate => OfQuality(id, finding, gate));
            }
        }

        yield return ($"drop height", gate => DropTests.For(history, gate, catalogue, day));
        if (curves.Loaded is { } loaded && curves.LoadSpeed.TryGet(out LoadCurve? speeds, out _))
        {
            yield return ($"load of a jump", gate => Loaded(history, loaded, speeds, gate));
        }

        if (curves.Pulls.TryGet(out LoadVelocity? pulls, out _))
        {
            yield return ($"maximum of the heavy pull", gate => Pull(history, day, pulls, gate));
        }

        if (curves.RunUp.TryGet(out RunUp? run, out _) && curves.Approach.TryGet(out ApproachJumps? jumps, out _))
        {
            yield return ($"run-up speed", gate => Approach(id, run, jumps, gate));
        }

        foreach (
            Quality quality in (Quality[])
                [Quality.Push, Quality.StretchShortening, Quality.AnkleStiffness, Quality.RunUp]
        )
        {
            if (Open(profile, quality) is { } finding)
            {
                yield return (QualityNames.Of(quality), gate => OfQuality(id, finding, gate));
            }
        }
    }

    private static Finding? Open(Profile profile, Quality quality) =>
        profile.Findings.FirstOrDefault(f =>
            f.Quality == quality
            && f.Verdict is FindingVerdict.NotTested or FindingVerdict.Unclear
            && f.Quality == quality
        );

    /// <summary>What is jumped in the test that the finding asks for, in the order in which it is tried; of two that belong together the quality's own.</summary>
    private static IEnumerable<string> Jumps(Finding finding) =>
        finding.Asks switch
        {
            QualityTest.SquatAndCountermovementJumps =>
            [
                finding.Quality == Quality.Push ? "squat-jump" : "countermovement-jump",
            ],
            // Whoever may not do the screen shows landings of another kind first.
            QualityTest.LandingScreen => TestForms.Of(QualityTest.LandingSession).Select(f => f.Exercises[0]),
            { } test => TestForms.Of(test).Select(f => f.Exercises[0]),
            null => [],
        };

    private static int TrialsOf(Finding finding) => finding.Asks is QualityTest.Hops ? Hops : Trials;

    private static Outcome<TestProposal> OfQuality(string athlete, Finding finding, TestGate gate)
    {
        if (finding.IsTooNear)
        {
            return Refusal.Of(
                $"More trials of that test are not worth their contacts: it lies too near what is wished, and no number of them would settle it."
            ) with
            {
                Brief = $"too near what is wished for trials to settle it",
            };
        }

        Refusal? last = null;
        int trials = TrialsOf(finding);
        foreach (string exercise in Jumps(finding))
        {
            double? dropM = gate.Find(exercise)?.DropRangeM?.MinM;
            // So many as would settle it, where that is no more than a test usually has twice over. Hops in a row are one trial.
            bool inARow = trials == Hops;
            int asked =
                inARow ? trials
                : finding.TrialsToSettle is { } needed and <= 2 * Trials ? Math.Max(needed, Trials)
                : trials;
            Outcome<TestProposal> test = Make(
                athlete,
                new TestAsk(exercise, asked) { DropM = dropM },
                gate,
                finding.Verdict == FindingVerdict.Unclear
                    ? finding.TrialsToSettle is { } n && n <= (inARow ? 1 : asked)
                        ? Sentence.Of(
                            $"{QualityNames.Of(finding.Quality)} isn't settled, and so many would settle it if the mean stays"
                        )
                        : Sentence.Of($"{QualityNames.Of(finding.Quality)} isn't settled")
                    : Sentence.Of($"a first look at {QualityNames.Of(finding.Quality)}"),
                inARow: inARow
            );
            if (test.TryGet(out _, out Refusal? no))
            {
                return test;
            }

            last ??= no;
        }

        return last ?? Refusal.Of($"Nobody here knows what is jumped in that test.");
    }

    private static Outcome<TestProposal> Loaded(History history, LoadedJumps jumps, LoadCurve curve, TestGate gate) =>
        curve.NextLoadKg is not { } load
            ? Refusal.Of(
                curve.IsSettled
                    ? Sentence.Of($"No further loaded jump is needed: {curve.Sentence}")
                    : TooHeavyKit(history, jumps, gate)
            ) with
            {
                Brief = curve.IsSettled ? TestOffer.KnownWellEnough : Sentence.Of($"no bar is light enough"),
            }
            : Make(
                history.Athlete.Id,
                new TestAsk(TestLoads.Jump, Trials)
                {
                    LoadKg = load,
                    HeaviestKg = jumps.HeaviestKg,
                    InsteadOfBar = TestLoads.InsteadFor(load, gate.Kit),
                },
                gate,
                curve.DoubtLeft is { } left
                    ? Sentence.Of($"it would leave {100 * left:0} % of what is not known of the range of loads")
                    : Sentence.Of($"it would sharpen the range of loads most"),
                curve.DoubtLeft
            );

    /// <summary>What is missing where nothing in the kit is light enough.</summary>
    private static Sentence TooHeavyKit(History history, LoadedJumps jumps, TestGate gate)
    {
        double light = gate.Limits["light-load"] * (history.Athlete.BodyMassKg ?? jumps.BodyMassKg);
        double most = Math.Min(light, jumps.HeaviestKg * Bounds.Share.Value / 100);
        double least = TestLoads.LeastKg(gate.Kit);
        Sentence said =
            $"A further loaded jump would help, but at most {new Mass(most):0.# kg} may be jumped with now ({100 * gate.Limits["light-load"]:0} % of body mass counts as light; never above 110 % of the heaviest jumped with), and the lightest that the kit makes is {new Mass(least):0.# kg}";
        return most >= TestLoads.LightestInsteadKg && least > TestLoads.LightestInsteadKg
            ? Sentence.Of($"{said}: a pair of light dumbbells or a weight vest in squad.yaml's kit would make less.")
            : Sentence.Of($"{said}.");
    }

    private static Outcome<TestProposal> Pull(History history, LocalDate day, LoadVelocity line, TestGate gate) =>
        line.NextLoadKg is not { } load
            ? Refusal.Of($"No further pull is needed: {line.Sentence}") with
            {
                Brief = TestOffer.KnownWellEnough,
            }
            : Make(
                history.Athlete.Id,
                new TestAsk("hex-bar-pull", 2)
                {
                    LoadKg = load,
                    HeaviestKg = HexBarPulls.Of(history, day).Max(p => p.LoadKg),
                },
                gate,
                $"it would narrow the estimated maximum most"
            );

    private static Outcome<TestProposal> Approach(string athlete, RunUp run, ApproachJumps jumps, TestGate gate) =>
        run.NextSpeedMS is not { } speed || run.NextFoot is not { } foot
            ? Refusal.Of($"No further approach jump is needed: {run.Sentence}") with
            {
                Brief = TestOffer.KnownWellEnough,
            }
            : Make(
                athlete,
                new TestAsk(foot == TakeOffFoot.TwoFeet ? "approach-jump-two-feet" : "approach-jump-one-foot", Trials)
                {
                    SpeedMS = jumps.Fastest(foot) is null ? null : speed,
                    FastestMS = jumps.Fastest(foot),
                },
                gate,
                $"it would sharpen the best run-up most"
            );

    private static Sentence Instead(string? kit) =>
        kit switch
        {
            null => $"",
            "weight-vest" => $" in a weight vest instead of the bar",
            _ => $" in a pair of dumbbells held at the sides instead of the bar",
        };

    private static Sentence How(Exercise exercise, TestAsk ask)
    {
        List<Sentence> how = [$"{exercise.Said}"];
        if (ask.DropM is { } drop)
        {
            how.Add($" from {new Length(drop):0 cm}");
        }

        if (ask.LoadKg is { } load)
        {
            how.Add($" with {new Mass(load):0.# kg}{Instead(ask.InsteadOfBar)}");
        }

        if (ask.SpeedMS is { } speed)
        {
            how.Add($" at about {speed:0.0} m/s");
        }

        return Sentence.Join("", how);
    }

    private static Outcome<TestProposal> Make(
        string athlete,
        TestAsk ask,
        TestGate gate,
        Sentence because,
        double? doubtLeft = null,
        bool inARow = false
    )
    {
        if (!gate.Check(ask).TryGet(out Exercise? exercise, out Refusal? refusal))
        {
            return refusal;
        }

        Sentence what =
            inARow ? Sentence.Of($"{How(exercise, ask)}, {ask.Trials} in a row")
            : ask.Trials == 1 ? Sentence.Of($"{How(exercise, ask)}, 1 trial")
            : Sentence.Of($"{How(exercise, ask)}, {ask.Trials} trials");
        bool jumps = exercise.ContactsPerRep > 0;
        return new TestProposal(
            athlete,
            exercise.Id,
            ask,
            TestGate.ContactsOf(exercise, ask.Trials),
            exercise.IsHighIntensityAt(ask.DropM),
            doubtLeft,
            $"{what}: {because}.",
            new TestStop(
                null,
                jumps && exercise.Intent == "maximal" ? gate.Limits["stop-height-loss"] : null,
                // A heavier bar or another speed gives another height by itself: counted from the first trial.
                null,
                jumps ? 1 : null,
                gate.PainStopsAbove
            )
        );
    }
}
