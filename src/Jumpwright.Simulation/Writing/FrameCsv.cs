using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Tasks;

namespace Jumpwright.Simulation.Writing;

/// <summary>
/// Writes the contract's frame recording (§1): a person steps through a film and notes the first frame without contact and the
/// first frame with it. The camera's frames fall anywhere against the motion.
/// </summary>
public static class FrameCsv
{
    /// <summary>The file's bytes.</summary>
    /// <param name="motion">The motion filmed.</param>
    /// <param name="framesPerSecond">Capture rate.</param>
    /// <param name="random">Draws the camera's phase.</param>
    /// <param name="labels">Metadata.</param>
    /// <param name="claimedFramesPerSecond">What is written as the rate; null for the capture rate. Another one is a slip.</param>
    public static byte[] Bytes(
        SimulatedMotion motion,
        double framesPerSecond,
        SeededRandom random,
        RecordingLabels? labels = null,
        double? claimedFramesPerSecond = null
    )
    {
        ByteLines lines = new(512);
        Metadata.Write(lines, labels);
        Metadata.Line(lines, "frames_per_second", claimedFramesPerSecond ?? framesPerSecond);
        lines.Text("frame,event\n");
        double phase = random.Unit();
        double? written = null;
        foreach ((double? touch, double takeOff, double? next) in IntervalCsv.Spans(motion))
        {
            Event(touch, "touch-down");
            Event(takeOff, "take-off");
            Event(next, "touch-down");
        }

        return lines.ToArray();

        void Event(double? timeS, string name)
        {
            // A touch-down that ends one flight begins the next contact: written once.
            if (timeS is not { } t || t == written)
            {
                return;
            }

            written = t;
            lines.Number(Math.Ceiling((t * framesPerSecond) + phase), 0);
            lines.Text("," + name + "\n");
        }
    }
}
