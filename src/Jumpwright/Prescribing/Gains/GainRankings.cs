using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Prescribing.Gains;

/// <summary>
/// What limits them, in centimetres. A quality that is shown to limit comes first whatever is published of it, one that is shown not to comes last: a mean of groups says
/// nothing of this athlete where their own tests do (<c>common practice</c>). Effects are of training programmes on groups: associations with one quality, never summed.
/// </summary>
public static class GainRankings
{
    private const double Sure = 0.9;

    /// <summary>The ranking; refused where the outcome itself was not measured.</summary>
    /// <param name="profile">What limits the athlete.</param>
    /// <param name="outcome">What they train for.</param>
    /// <param name="now">The outcome as measured, m; null when it was not.</param>
    /// <param name="betweenSdM">SD of that outcome between the squad's athletes, m; null when the squad is too small.</param>
    /// <param name="isOpen">Whether an exercise, by its id, is open to the athlete; null: all are.</param>
    public static Outcome<GainRanking> Of(
        Profile profile,
        ChosenOutcome outcome,
        Measure? now,
        double? betweenSdM,
        Func<string, bool>? isOpen = null
    ) => Of(profile, outcome, now, betweenSdM, PublishedEffects.On(outcome), isOpen);

    /// <summary>The same from other effects, to see what hangs on them.</summary>
    public static Outcome<GainRanking> Of(
        Profile profile,
        ChosenOutcome outcome,
        Measure? now,
        double? betweenSdM,
        ImmutableArray<PublishedEffect> effects,
        Func<string, bool>? isOpen = null
    )
    {
        ArgumentNullException.ThrowIfNull(profile);
        if (outcome != ChosenOutcome.SymmetricLanding && now is null)
        {
            return Refusal.Of(
                $"The outcome chosen, {Name(outcome)}, was not measured for this athlete: measure it first, three trials."
            );
        }

        ImmutableArray<Sentence> conditions =
        [
            .. profile
                .Findings.Where(f => f.Quality is Quality.Landing or Quality.SingleLeg)
                .Where(f => f.Verdict != FindingVerdict.Sound)
                .Select(f =>
                    f.Verdict switch
                    {
                        FindingVerdict.NotTested => Sentence.Of(
                            $"Not tested: {QualityNames.Of(f.Quality)}. {f.NextTest:capital}."
                        ),
                        FindingVerdict.Limits => Sentence.Of($"Not met: {QualityNames.Of(f.Quality)}. {f.Sentence}"),
                        _ => Sentence.Of($"Not settled: {QualityNames.Of(f.Quality)}. {f.Sentence}"),
                    }
                ),
        ];
        Gain[] all =
        [
            .. Enum.GetValues<Quality>()
                .Where(q => q != Quality.Landing)
                .Select(q => Make(profile, outcome, now, betweenSdM, q, effects, isOpen ?? (_ => true))),
        ];
        int Place(Quality quality) =>
            profile.Findings.FirstOrDefault(f => f.Quality == quality)?.Verdict switch
            {
                FindingVerdict.Limits => 0,
                FindingVerdict.Sound => 2,
                _ => 1,
            };
        // What nobody may train today comes after what can be, unless it is what limits them.
        int Standing(Gain gain) =>
            Place(gain.Quality) is > 0 and var place && !gain.IsOpen ? Math.Max(place, 2) + 1 : Place(gain.Quality);
        Gain[] ranked =
        [
            .. all.Where(g => g.Centimetres is not null).OrderBy(Standing).ThenByDescending(g => g.Centimetres),
        ];
        Gain? limiting = all.Where(g => g.Quality != Quality.SingleLeg && Place(g.Quality) == 0)
            .MaxBy(g => g.LimitsThem);
        // What is weighed against each other is of one standing.
        Gain[] rivals = [.. ranked.Where(g => Standing(g) == Standing(ranked[0]))];
        double? chance =
            rivals.Length < 2
                ? null
                : Likelihood.Above(
                    rivals[0].Centimetres!.Value - rivals[1].Centimetres!.Value,
                    Math.Sqrt(Square(Sd(rivals[0])) + Square(Sd(rivals[1]))),
                    0
                );
        // Alone among what may limit, beside others that are shown not to: whether it limits is the question.
        bool asked =
            limiting is null
            && rivals is [var only]
            && ranked.Length > 1
            && only.IsOpen
            && profile.Findings.Any(f => f.Quality == only.Quality && f.Verdict != FindingVerdict.Sound);
        bool settled = limiting is not null || (!asked && chance is null or >= Sure);
        Finding? next = settled ? null : Next(profile, rivals);
        return new GainRanking(
            profile.AthleteId,
            outcome,
            conditions,
            [.. ranked],
            [.. all.Where(g => g.Centimetres is null)],
            settled,
            chance,
            next?.NextTest,
            limiting is not null ? First(limiting, outcome, conditions)
                : asked ? Asked(rivals[0], outcome, conditions)
                : Say(rivals, chance, settled, conditions)
        )
        {
            Next = next?.Quality,
            TestWaits = next?.TestWaits == true,
        };
    }

    private static Gain Make(
        Profile profile,
        ChosenOutcome outcome,
        Measure? now,
        double? between,
        Quality quality,
        ImmutableArray<PublishedEffect> effects,
        Func<string, bool> isOpen
    )
    {
        Finding? finding = profile.Findings.FirstOrDefault(f => f.Quality == quality);
        double? limits = finding?.Probability;
        Sentence known = limits is { } p
            ? Sentence.Of($"That it limits them: {Probability.Said(p)}.")
            : Sentence.Of($"Whether it limits them was not tested.");
        PublishedEffect? effect = effects.FirstOrDefault(e => e.Quality == quality);
        if (effect is null || now is null)
        {
            return new Gain(
                quality,
                null,
                null,
                null,
                limits,
                finding is null
                    ? Sentence.Of(
                        $"{QualityNames.Of(quality):capital}: no published effect on {Name(outcome)}. {known}"
                    )
                    : Sentence.Of(
                        $"{QualityNames.Of(quality):capital}: no published effect on {Name(outcome)}. {known} {finding.Sentence}"
                    )
            );
        }

        if (!effect.InPercent && between is null)
        {
            return new Gain(
                quality,
                null,
                null,
                null,
                limits,
                $"{QualityNames.Of(quality):capital}: {Sentence.OfCatalogue(effect.Training)}; centimetres need the spread of a squad of five or more. {known}"
            );
        }

        double cm = effect.InPercent ? effect.Value / 100 * now.Value * 100 : effect.Value * between!.Value * 100;
        double relative = Math.Sqrt(
            Square(effect.StandardUncertainty / effect.Value)
                + Square(effect.InPercent ? now.StandardUncertainty / now.Value : 0.2)
        );
        double sd = cm * relative;
        Sentence typically =
            $"{QualityNames.Of(quality):capital}: typically {Cm(cm):0.0 cm} ({Cm(cm - (1.96 * sd)):0.0 (cm)} to {Cm(cm + (1.96 * sd)):0.0 (cm)}) in {Name(outcome)}, as {Sentence.OfCatalogue(effect.Training)}.";
        if (!effect.InPercent)
        {
            typically =
                $"{typically} The SD put in is this squad's, {Cm(100 * between!.Value):0.0 cm}: where ages or sexes are mixed, that is too much.";
        }

        bool open = effect.ExerciseId is not { } exercise || isOpen(exercise);
        return new Gain(
            quality,
            cm,
            cm - (1.96 * sd),
            cm + (1.96 * sd),
            limits,
            open
                ? Sentence.Of($"{typically} An association, not a promise. {known}")
                : Sentence.Of(
                    $"{typically} Closed to them now, so nothing of it can be had yet: {SaidExercise.InWords(effect.ExerciseId!):small}. {known}"
                )
        )
        {
            IsOpen = open,
        };
    }

    private static Finding? Next(Profile profile, Gain[] ranked) =>
        ranked
            .Take(2)
            .Select(g => profile.Findings.FirstOrDefault(f => f.Quality == g.Quality))
            .FirstOrDefault(f => f?.Verdict is FindingVerdict.NotTested or FindingVerdict.Unclear);

    private static Sentence First(Gain limiting, ChosenOutcome outcome, ImmutableArray<Sentence> conditions)
    {
        Sentence said = limiting.Centimetres is { } cm
            ? Sentence.Of(
                $"{QualityNames.Of(limiting.Quality):capital} limits them, so that training it comes first: typically {Cm(cm):0.0 cm} in {Name(outcome)}."
            )
            : Sentence.Of(
                $"{QualityNames.Of(limiting.Quality):capital} limits them, so that training it comes first; how much that brings in {Name(outcome)} is not published."
            );
        return conditions.IsEmpty ? said : Sentence.Of($"Conditions come first. {said}");
    }

    private static Sentence Asked(Gain gain, ChosenOutcome outcome, ImmutableArray<Sentence> conditions)
    {
        Sentence said =
            $"{QualityNames.Of(gain.Quality):capital} comes first if it limits them, which isn't known: typically {Cm(gain.Centimetres!.Value):0.0 cm} in {Name(outcome)}.";
        return conditions.IsEmpty ? said : Sentence.Of($"Conditions come first. {said}");
    }

    private static Sentence Say(Gain[] ranked, double? chance, bool settled, ImmutableArray<Sentence> conditions)
    {
        Sentence said = ranked switch
        {
            [] => $"No effect on this outcome is published that we could rank; train what limits them.",
            [var only] => only.Sentence,
            [var one, var other, ..] when settled =>
                $"{QualityNames.Of(one.Quality):capital} would typically bring most ({Cm(one.Centimetres!.Value):0.0 cm}; chance {Probability.Said(chance!.Value)} against {QualityNames.Of(other.Quality)}).",
            [var one, var other, ..] =>
                $"{QualityNames.Of(one.Quality):capital} ({Cm(one.Centimetres!.Value):0.0 cm}) and {QualityNames.Of(other.Quality)} ({Cm(other.Centimetres!.Value):0.0 cm}) can't be told apart: {chance:0.00} for the first.",
        };
        return conditions.IsEmpty ? said : Sentence.Of($"Conditions come first. {said}");
    }

    internal static Sentence Name(ChosenOutcome outcome) =>
        outcome switch
        {
            ChosenOutcome.StandingJump => $"the standing jump",
            ChosenOutcome.ApproachJumpTwoFeet => $"the approach jump off two feet",
            ChosenOutcome.ApproachJumpOneFoot => $"the approach jump off one foot",
            ChosenOutcome.Rebound => $"the rebound",
            _ => $"the symmetric landing",
        };

    private static double Sd(Gain gain) => (gain.High!.Value - gain.Low!.Value) / 3.92;

    private static double Square(double x) => x * x;

    private static Length Cm(double centimetres) => new(centimetres / 100);
}
