using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Dosing;

/// <summary>The room's door: how an open exercise would be done by this athlete on this day.</summary>
public static class Doses
{
    /// <summary>The dose, or a sentence why there is none (no safe height, no load known, …).</summary>
    public static Outcome<Dose> For(
        Exercise exercise,
        OpenWork today,
        Profile profile,
        History history,
        LocalDate day
    ) =>
        Of(exercise, today, profile, history, day)
            .Then<Dose>(dose => dose with { Instead = Instead(exercise, dose, today, profile, history, day) });

    /// <summary>What is done in the place of that dose where it is sore, or null where nothing is left.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="dose">How it would be done.</param>
    /// <param name="today">What is open that day.</param>
    /// <param name="profile">Whose.</param>
    /// <param name="history">Whose.</param>
    /// <param name="day">The day.</param>
    /// <param name="onFloor">Whether it may land on the floor.</param>
    internal static Dose? Instead(
        Exercise exercise,
        Dose dose,
        OpenWork today,
        Profile profile,
        History history,
        LocalDate day,
        bool onFloor = true
    ) =>
        Insteads
            .For(exercise, today, onFloor)
            .Select(easier =>
                Of(easier, today, profile, history, day).TryGet(out Dose? its, out _)
                    ? its with
                    {
                        Reps = Math.Min(its.Reps, dose.Reps),
                        DropHeightM = Lowest(its.DropHeightM, easier.DropRangeM),
                        ExpectedDropHeightM = null,
                        BoxHeightM = Lowest(its.BoxHeightM, easier.BoxRangeM),
                    }
                    : null
            )
            .FirstOrDefault(its => its is not null);

    private static double? Lowest(double? chosen, HeightRange? range) =>
        chosen is { } height && range is { } within ? Math.Min(height, within.MinM) : chosen;

    /// <summary>The dose but for what is done instead.</summary>
    private static Outcome<Dose> Of(Exercise exercise, OpenWork today, Profile profile, History history, LocalDate day)
    {
        Ladder ladder = today.Ladder;
        if (ladder.Find(exercise.Id) is not { } rung)
        {
            return Refusals.Closed(exercise);
        }

        if (today.Of(exercise).Closings.FirstOrDefault(c => c.By != ClosedBy.Ruling) is { } closing)
        {
            return closing.By == ClosedBy.Kit ? Refusal.Of(closing.Because) : Refusals.Closed(exercise);
        }

        LimitBook limits = LimitBook.For(history, day);
        DropChoice? drop = null;
        if (exercise.DropRangeM is not null)
        {
            if (!DropHeights.For(exercise, history, today, day).TryGet(out drop, out Refusal? noDrop))
            {
                return noDrop;
            }
        }

        // The ladder may be of an earlier day than these rulings; what they forbid at this height is not dosed.
        if (today.Of(exercise, drop?.NominalM).First is { Ruling: { } forbidding })
        {
            return Refusals.Forbidden(exercise, forbidding);
        }

        LoadChoice? load = null;
        if (exercise.Load is not null)
        {
            if (!Loads.For(exercise, history, day).TryGet(out load, out Refusal? noLoad))
            {
                return noLoad;
            }
        }

        (double HeightM, Sentence Because)? box = exercise.BoxRangeM is null
            ? null
            : BoxHeights.For(exercise, rung, profile, history.Athlete, limits);
        (double SpeedMS, Sentence Because)? runUp = RunUpSpeeds.For(exercise, history, day);
        Amount amount = Amount.Of(exercise, rung, ladder, history.Athlete, day, limits);
        return new Dose
        {
            ExerciseId = exercise.Id,
            SetsMin = amount.SetsMin,
            SetsMax = amount.SetsMax,
            Reps = amount.Reps,
            ContactsPerRep = exercise.ContactsPerRep,
            Limb = exercise.Limb,
            Start = exercise.Start,
            Arms = exercise.Arms,
            Intent = exercise.Intent,
            DropHeightM = drop?.NominalM,
            ExpectedDropHeightM = drop?.ExpectedM,
            BoxHeightM = box?.HeightM,
            ExternalLoadKg = load?.LoadKg,
            LoadBasis = load?.Basis,
            RunUpSteps = exercise.RunUpSteps is { } steps
                ? rung.State == RungState.Owned
                    ? Math.Min(steps.Max, steps.Min + 2)
                    : steps.Min
                : null,
            RunUpSpeedMS = runUp?.SpeedMS,
            RestBetweenRepsS = exercise.Dose.RestBetweenRepsS,
            RestBetweenSetsS = exercise.Dose.RestBetweenSetsS,
            MinutesPerSet = exercise.MinutesPerSet,
            HighIntensity = exercise.IsHighIntensityAt(drop?.NominalM),
            Stop = StopFor(exercise, today, limits),
            Because = [.. Reasons(exercise, amount, drop, box?.Because, load, runUp?.Because)],
        };
    }

    private static StopRule StopFor(Exercise exercise, OpenWork today, LimitBook limits)
    {
        bool lands = exercise.ContactsPerRep > 0;
        bool maximal = exercise.Intent == "maximal" && lands;
        bool rebounds = maximal && exercise.Trains.Contains(Quality.ReactiveStrength);
        return new StopRule(
            maximal ? limits["stop-height-loss"] : null,
            rebounds ? limits["stop-contact-gain"] : null,
            lands ? Math.Min(limits.Whole("stop-landing-faults"), exercise.StopsAtFaults ?? int.MaxValue) : null,
            PainAtWork.StopAbove(today.Rulings, limits),
            PainSiteNew: true
        );
    }

    private static IEnumerable<Sentence> Reasons(
        Exercise exercise,
        Amount amount,
        DropChoice? drop,
        Sentence? box,
        LoadChoice? load,
        Sentence? runUp
    )
    {
        yield return amount.Because;
        if (drop is not null)
        {
            yield return drop.Because;
            if (drop.ExpectedM is { } real)
            {
                yield return $"The real fall is likely {new Length(real):0 cm}, as in this athlete's own drop jumps.";
            }
        }

        if (box is not null)
        {
            yield return box;
        }

        if (load is not null)
        {
            yield return $"{new LoadToTake(load.LoadKg)}: {load.Basis}.";
        }

        if (runUp is not null)
        {
            yield return runUp;
        }

        if (exercise.ExternalLoad == "band")
        {
            yield return $"The band's pull was not measured: take the lightest, check it for wear, and let a heavy flat-sided anchor hold it.";
        }
    }
}
