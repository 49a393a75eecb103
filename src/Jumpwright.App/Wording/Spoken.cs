using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>
/// The core's enumerations in the language of the request, for pages that are translated; <see cref="Words"/> has the trade's English,
/// which English sentences take.
/// </summary>
internal static class Spoken
{
    public static string Of(Stage stage) => T[$"stage.{stage}"];

    public static string Of(Tissue tissue) => T[$"tissue.{tissue}"];

    public static string Of(PlanStatus status) => T[$"plan.status.{status}"];

    public static string Of(Quality quality) => T[$"quality.{quality}"];

    public static string Of(RungState state) => T[$"rung.{state}"];

    public static string Of(CriterionVerdict verdict) => T[$"criterion.{verdict}"];

    public static string Of(Device device) => Find($"device.{device}") ?? Words.Of(device);
}
