using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>Makes again, for drawing, the curves that a trial's measures were taken from.</summary>
public static class Tracing
{
    /// <summary>The curves of one trial, from a little before its onset to a little after its landing settled.</summary>
    public static Outcome<MotionTrace> Of(ForceRecording recording, Trial trial) => throw new NotImplementedException();
}
