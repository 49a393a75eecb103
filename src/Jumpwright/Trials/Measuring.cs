using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>The room's door: recording and task in, trials or a refusal out.</summary>
public static class Measuring
{
    private static readonly string[] Sides =
    [
        MeasureNames.AsymmetryBrakingImpulse,
        MeasureNames.AsymmetryPropulsiveImpulse,
        MeasureNames.AsymmetryLandingImpulse,
    ];

    /// <summary>Measures a recording as the task asks.</summary>
    /// <param name="recording">What the device wrote.</param>
    /// <param name="task">What was asked; null takes the recording's label.</param>
    /// <param name="options">Null takes the defaults.</param>
    /// <returns>At least one trial in order of time, or one sentence why there is none.</returns>
    public static Outcome<ImmutableArray<Trial>> Of(
        Recording recording,
        JumpTask? task = null,
        MeasuringOptions? options = null
    )
    {
        ArgumentNullException.ThrowIfNull(recording);
        if ((task ?? recording.Labels.Task) is not { } asked)
        {
            return Refusals.NoTask();
        }

        MeasuringOptions set = options ?? MeasuringOptions.Default;
        return recording switch
        {
            ForceRecording { SidesAssumed: true } force => OfForce(force, asked, set)
                .Then<ImmutableArray<Trial>>(trials => trials.Select(WithSidesInDoubt).ToImmutableArray()),
            ForceRecording force => OfForce(force, asked, set),
            IntervalRecording intervals => IntervalTrials.Of(intervals, asked),
            _ => Refusals.NotYet(asked.Id()),
        };
    }

    /// <summary>Where nobody said which plate is the left foot's, the sign of an asymmetry is not to be decided from.</summary>
    private static Trial WithSidesInDoubt(Trial trial) =>
        trial with
        {
            Doubtful =
            [
                .. trial.Doubtful,
                .. Sides.Where(side => trial.Find(side) is not null && !trial.Doubtful.Contains(side)),
            ],
        };

    private static Outcome<ImmutableArray<Trial>> OfForce(ForceRecording force, JumpTask task, MeasuringOptions options)
    {
        using var plate = Plate.Of(force);
        if (PlateDefects.Find(plate) is { } refusal)
        {
            return refusal;
        }

        return Found(plate, task, options)
            .Then<ImmutableArray<Trial>>(trials => Smoothing.Named(plate, PlateClocks.Named(plate, trials)));
    }

    /// <summary>Found by the engine, or with events that a person set.</summary>
    private static Outcome<ImmutableArray<Trial>> Found(Plate plate, JumpTask task, MeasuringOptions options)
    {
        ImmutableArray<EventCorrection> corrections = options.Corrections;
        if (corrections.IsEmpty)
        {
            return Found(plate, task, corrections);
        }

        bool takes =
            task
            is JumpTask.CountermovementJump
                or JumpTask.SquatJump
                or JumpTask.LoadedJump
                or JumpTask.BoxJump
                or JumpTask.DropJump;
        if (!takes)
        {
            return Refusals.HandTask(task.Id());
        }

        return Found(plate, task, ImmutableArray<EventCorrection>.Empty)
            .Then(found =>
                HandSet.Objection(corrections, found, plate) is { } objection
                    ? objection
                    : Found(plate, task, corrections)
            );
    }

    private static Outcome<ImmutableArray<Trial>> Found(
        Plate plate,
        JumpTask task,
        ImmutableArray<EventCorrection> corrections
    ) =>
        task switch
        {
            JumpTask.CountermovementJump or JumpTask.SquatJump or JumpTask.LoadedJump or JumpTask.BoxJump =>
                StandingJumpTrials.Of(plate, task, corrections),
            JumpTask.DropJump => DropJumpTrials.Of(plate, corrections),
            JumpTask.RepeatedHops => RepeatedHopTrials.Of(plate),
            JumpTask.DropLanding => LandingTrials.Of(plate),
            JumpTask.SnapDown => SnapDownTrials.Of(plate),
            JumpTask.ApproachJump => ApproachTrials.Of(plate),
            _ => Refusals.NotYet(task.Id()),
        };
}
