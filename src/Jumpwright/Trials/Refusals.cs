using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>Every sentence with which measuring refuses: what is wrong, where, and what to do.</summary>
internal static class Refusals
{
    public static Refusal NoTask() =>
        RefusedFor.TaskNotSaid.Refuse(
            $"The recording does not say what was asked: add '# task:' above the header or a row in trials.csv."
        );

    public static Refusal TaskNeedsForce(string task) =>
        RefusedFor.TaskNotMeasurable.Refuse(
            $"The task {task} needs a force recording: contact and flight times alone do not show it."
        );

    public static Refusal NotYet(string task) =>
        RefusedFor.TaskNotMeasurable.Refuse(
            $"The task {task} cannot be measured yet: nothing was computed from this recording."
        );

    public static Refusal TooShort(double seconds) =>
        RefusedFor.TooShort.Refuse(
            $"The recording lasts {seconds:0.00} s: too short to hold standing, a jump and a landing; record from quiet standing on."
        );

    public static Refusal SignReversed(double newtons) =>
        RefusedFor.PlateFault.Refuse(
            $"The force is negative while somebody stands on the plate ({newtons:0} N): export it with upward force positive."
        );

    public static Refusal NotZeroed(double newtons) =>
        RefusedFor.PlateFault.Refuse(
            $"The empty plate reads {newtons:0} N: zero the plate, with nobody on it, and record again."
        );

    public static Refusal NobodyOnPlate() =>
        RefusedFor.NoJump.Refuse(
            $"Nobody stands on the plate at any time: if the recording ended too early, record again with three seconds of standing; if not, check the file and the unit of the force (newtons)."
        );

    public static Refusal Unit(double newtons) =>
        RefusedFor.UnitWrong.Refuse(
            $"The weight on the plate would be {newtons:0.##} N: the force does not look like newtons; check the unit and export again."
        );

    public static Refusal PoundsForce(double newtons, double statedKg) =>
        RefusedFor.UnitWrong.Refuse(
            $"The weight on the plate would be {newtons:0} N, but {new Mass(statedKg):0.0 kg} are stated: the force looks like pounds; name the column force_lbf or export newtons."
        );

    public static Refusal Saturated(double atS, double newtons) =>
        RefusedFor.PlateFault.Refuse(
            $"At {atS:0.000} s the plate is at its limit ({newtons:0} N), so the true force is unknown: record with a larger range."
        );

    public static Refusal Spike(double atS) =>
        RefusedFor.PlateFault.Refuse(
            $"At {atS:0.000} s a single sample jumps away and back, which no person does: check the cable and record again."
        );

    public static Refusal Dropout(double atS) =>
        RefusedFor.SamplesMissing.Refuse(
            $"At {atS:0.000} s the force falls to nothing for an instant and returns: samples were lost; record again."
        );

    public static Refusal Frozen(double atS) =>
        RefusedFor.SamplesMissing.Refuse(
            $"From {atS:0.000} s the force stands at one value in mid-movement: samples were lost; record again."
        );

    public static Refusal FilledGap(double fromS, double toS) =>
        RefusedFor.SamplesMissing.Refuse(
            $"From {fromS:0.000} to {toS:0.000} s the force lies on a straight line, without the noise round it: samples were lost and the gap was filled; record again."
        );

    public static Refusal NeverLeavesPlate() =>
        RefusedFor.NoJump.Refuse(
            $"The force never falls to nothing, so there is no flight: record the whole jump, take-off and landing on the plate."
        );

    public static Refusal NeverStillNoFlight() =>
        RefusedFor.NeverStill.Refuse(
            $"Nobody stands still and there is no complete flight: stand still for a second before the jump and land on the plate."
        );

    public static Refusal NoJump() =>
        RefusedFor.NoJump.Refuse(
            $"No jump was found: the athlete only steps on or off, or moves without leaving the plate."
        );

    public static Refusal NoCompleteInterval() =>
        RefusedFor.NoJump.Refuse(
            $"No complete flight among the intervals: record a take-off and the touch-down after it."
        );

    public static Refusal NoDropContact() =>
        RefusedFor.NoJump.Refuse(
            $"No contact between a fall onto the empty plate and a flight: record from before the step off the box to the second landing."
        );

    public static Refusal NoCompleteHop() =>
        RefusedFor.NoJump.Refuse(
            $"No complete hop, a contact with the flight after it, was found: record the whole series of hops on the plate."
        );

    public static Refusal TrialNotOfRecording() =>
        RefusedFor.ByHand.Refuse(
            $"The trial's instants lie outside this recording: draw it from the recording it was measured from."
        );

    public static Refusal NoLanding() =>
        RefusedFor.NoJump.Refuse(
            $"No landing on the empty plate was found: record from before the fall to two seconds of standing after it."
        );

    public static Refusal NoSnapDown() =>
        RefusedFor.NoJump.Refuse(
            $"No snap-down was found: stand tall and still for a second, drop and catch, and hold the catch for two seconds."
        );

    public static Refusal NoPlant() =>
        RefusedFor.NoJump.Refuse(
            $"No plant on the empty plate was found: start off the plate and take off from it within a second."
        );

    public static Refusal ApproachOffPlate() =>
        RefusedFor.NeverStill.Refuse(
            $"The athlete neither lands on the plate nor stands still on it, so there is no complete flight and no weight: land on the plate, or stand on it in the same recording."
        );

    public static Refusal HandTask(string task) =>
        RefusedFor.ByHand.Refuse(
            $"Events of the task {task} can't be set by hand yet: only those of standing jumps and of drop jumps can."
        );

    public static Refusal HandOutside(Sentence which, double atS) =>
        RefusedFor.ByHand.Refuse(
            $"The {which} was set at {atS:0.000} s, outside the recording or far from its jump: set it on the jump's own curve."
        );

    public static Refusal HandNotThere(Sentence which) =>
        RefusedFor.ByHand.Refuse(
            $"No {which} was found in this trial, so there is none to correct: correct one that is listed with it."
        );

    public static Refusal HandNoTrial(int number) =>
        RefusedFor.ByHand.Refuse(
            $"There is no trial {number} in the recording, so none of its events can be set: name one of its trials."
        );

    public static Refusal HandOutOfOrder(Sentence before, Sentence after) =>
        RefusedFor.ByHand.Refuse(
            $"The {after} would come before the {before}: set them in the order in which they happened."
        );
}
