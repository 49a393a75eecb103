using Jumpwright.Athletes.Profiles;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Prescribing.Reports;

/// <summary>Measures, tasks and outcomes as people say them.</summary>
internal static class ReportWords
{
    internal static Sentence Of(SeriesKey key) =>
        $"{Measure(key.Measure)}, {Jump(key)}{Limb(key.Limb)} ({new SaidMethod(key.Method)}, {Spoken.Device(key.Device)})";

    internal static SaidMeasure Measure(string name) =>
        new(
            name,
            name switch
            {
                MeasureNames.JumpHeight => "jump height",
                MeasureNames.JumpHeightFlightTime => "jump height by flight time",
                MeasureNames.ReactiveStrengthIndex => "reactive strength index",
                MeasureNames.ReactiveStrengthIndexModified => "modified reactive strength index",
                MeasureNames.ContactTime => "contact time",
                MeasureNames.TimeToTakeOff => "time to take-off",
                MeasureNames.PeakForce => "peak force",
                MeasureNames.PeakLandingForce => "peak landing force",
                MeasureNames.VerticalStiffness => "vertical stiffness",
                _ => name[..(name.LastIndexOf('_') is var i and > 0 ? i : name.Length)].Replace('_', ' '),
            }
        );

    internal static Sentence Contacts(int contacts) =>
        contacts switch
        {
            0 => $"No contacts.",
            1 => $"One contact.",
            _ => $"{contacts} contacts.",
        };

    internal static Sentence Outcome(ChosenOutcome outcome) => GainRankings.Name(outcome);

    private static Sentence Jump(SeriesKey key) =>
        key.Condition is not { } value ? Task(key.Task)
        : key.Task == JumpTask.LoadedJump ? Sentence.Of($"{Task(key.Task)} with {new Mass(value):0.# kg}")
        : Sentence.Of($"{Task(key.Task)} from {new Length(value):0 cm}");

    private static Sentence Task(JumpTask task) =>
        task switch
        {
            JumpTask.CountermovementJump => $"countermovement jump",
            JumpTask.SquatJump => $"squat jump",
            JumpTask.LoadedJump => $"loaded jump",
            JumpTask.DropJump => $"drop jump",
            JumpTask.RepeatedHops => $"repeated hops",
            JumpTask.DropLanding => $"drop landing",
            JumpTask.SnapDown => $"snap-down",
            JumpTask.ApproachJump => $"approach jump",
            _ => $"box jump",
        };

    private static Sentence Limb(Limb limb) =>
        limb switch
        {
            Recordings.Limb.Left => $", left leg",
            Recordings.Limb.Right => $", right leg",
            _ => $"",
        };
}
