using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Dosing;

/// <summary>All sentences with which this room gives no dose.</summary>
internal static class Refusals
{
    internal static Refusal Closed(Exercise exercise) => new($"{exercise.Name} is not open to this athlete.");

    internal static Refusal Forbidden(Exercise exercise, Ruling ruling) => new($"{exercise.Name}: {ruling.Because}");

    internal static Refusal NoDrop(Exercise exercise, double lowestM, double capM, string why) =>
        new($"{exercise.Name} starts from {100 * lowestM:0} cm, and {100 * capM:0} cm is the most allowed: {why}.");

    internal static Refusal NoDropMeasured(Exercise exercise, double lowestM, double stepM) =>
        new(
            $"{exercise.Name} starts from {100 * lowestM:0} cm, and no drop jump was measured yet: measure drop jumps from a low box first, a step of at most {100 * stepM:0} cm at a time."
        );

    internal static Refusal MassUnknown(Exercise exercise) =>
        new($"{exercise.Name}: no load can be given while body mass is unknown; weigh the athlete.");

    internal static Refusal NoLoadTest(Exercise exercise, double staleDays) =>
        new($"{exercise.Name}: no load can be given without a hex-bar test of the last {staleDays:0} days.");

    internal static Refusal BarTooHeavy(Exercise exercise, double mostKg) =>
        new(
            $"{exercise.Name}: even an empty bar of {DoseRules.LightestBar.Value:0} kg is above {mostKg:0.#} kg, the most for this athlete."
        );
}
