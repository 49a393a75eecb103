using Jumpwright.Recordings;
using Jumpwright.Simulation.Tasks;

namespace Jumpwright.Simulation.Writing;

/// <summary>Writes the contract's interval recording (§1), as a contact mat that counts milliseconds would.</summary>
public static class IntervalCsv
{
    public static byte[] Bytes(SimulatedMotion motion, RecordingLabels? labels = null)
    {
        ByteLines lines = new(512);
        Metadata.Write(lines, labels);
        lines.Text("contact_s,flight_s\n");
        IReadOnlyList<(double? TouchDownS, double TakeOffS, double? NextS)> spans = Spans(motion);
        foreach ((double? touch, double takeOff, double? next) in spans)
        {
            if (touch is { } t)
            {
                lines.Number(takeOff - t, 3);
            }

            lines.Byte((byte)',');
            if (next is { } n)
            {
                lines.Number(n - takeOff, 3);
            }

            lines.Byte((byte)'\n');
        }

        return lines.ToArray();
    }

    /// <summary>Each contact with its touch-down (null for a start from standing), take-off and the touch-down after it.</summary>
    internal static IReadOnlyList<(double? TouchDownS, double TakeOffS, double? NextS)> Spans(SimulatedMotion motion)
    {
        List<(double?, double, double?)> spans = [];
        if (motion.Task == JumpTask.RepeatedHops)
        {
            // The first take-off ends standing, whose beginning nobody timed.
            Motions.MotionPiece flight = motion.Motion.Pieces.First(p => !p.InContact);
            spans.Add((null, flight.FromS, motion.Contacts[0].FromS));
        }

        for (int i = 0; i < motion.Contacts.Length; i++)
        {
            ContactSpan contact = motion.Contacts[i];
            bool fromStanding = motion.OnsetS is { } onset && contact.FromS == onset;
            double? next = i + 1 < motion.Contacts.Length ? motion.Contacts[i + 1].FromS : motion.LandingS;
            spans.Add((fromStanding ? null : contact.FromS, contact.ToS, next));
        }

        return spans;
    }
}
