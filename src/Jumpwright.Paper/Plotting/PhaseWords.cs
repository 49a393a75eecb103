using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Paper.Plotting;

/// <summary>The phases of a jump, and the instants between them, as a picture names them.</summary>
internal static class PhaseWords
{
    public static Sentence TakeOff => $"take-off";

    public static Sentence TouchDown => $"touch-down";

    public static Sentence Of(Phase phase) =>
        phase.Name switch
        {
            Tracing.Weighing => $"weighing",
            Tracing.Unweighting => $"unweighting",
            Tracing.Braking => $"braking",
            Tracing.Propulsion => $"propulsion",
            Tracing.Flight => $"flight",
            Tracing.Landing => $"landing",
            Tracing.Fall => $"fall",
            _ => Sentence.Plain(phase.Name),
        };
}
