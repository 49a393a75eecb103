using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Dosing;

/// <summary>All sentences with which this room gives no dose.</summary>
internal static class Refusals
{
    internal static Refusal Closed(Exercise exercise) => Refusal.Of($"{exercise.Said} is not open to this athlete.");

    internal static Refusal Forbidden(Exercise exercise, Ruling ruling) =>
        Refusal.Of($"{exercise.Said}: {ruling.Because}");

    internal static Refusal NoDrop(Exercise exercise, double lowestM, double capM, Sentence why) =>
        Refusal.Of(
            $"{exercise.Said} starts from {new Length(lowestM):0 cm}, and {new Length(capM):0 cm} is the most allowed: {why}."
        );

    internal static Refusal NoDropMeasured(Exercise exercise, double lowestM, double stepM) =>
        Refusal.Of(
            $"{exercise.Said} starts from {new Length(lowestM):0 cm}, and no drop jump was measured yet: measure drop jumps from a low box first, a step of at most {new Length(stepM):0 cm} at a time."
        );

    internal static Refusal MassUnknown(Exercise exercise) =>
        Refusal.Of($"{exercise.Said}: no load can be given while body mass is unknown; weigh the athlete.");

    internal static Refusal NoLoadTest(Exercise exercise, double staleDays) =>
        Refusal.Of($"{exercise.Said}: no load can be given without a hex-bar test of the last {staleDays:0} days.");

    internal static Refusal BarTooHeavy(Exercise exercise, double mostKg) =>
        Refusal.Of(
            $"{exercise.Said}: even an empty bar of {new Mass(DoseRules.LightestBar.Value):0 kg} is above {new Mass(mostKg):0.# kg}, the most for this athlete."
        );
}
