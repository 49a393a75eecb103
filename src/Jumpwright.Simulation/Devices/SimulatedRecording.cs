using Jumpwright.Simulation.Tasks;

namespace Jumpwright.Simulation.Devices;

/// <summary>What the plates wrote, with its truth.</summary>
/// <param name="Motion">The motion behind it.</param>
/// <param name="Settings">The device.</param>
/// <param name="Truth">On the recording's clock.</param>
/// <param name="FirstSampleS">Time of the first sample on the motion's clock, s; the recording's clock starts there at 0.</param>
/// <param name="TotalN">Only with one plate, N.</param>
/// <param name="LeftN">With two plates, N.</param>
/// <param name="RightN">With two plates, N.</param>
public sealed record SimulatedRecording(
    SimulatedMotion Motion,
    PlateSettings Settings,
    Truth Truth,
    double FirstSampleS,
    double[] TotalN,
    double[] LeftN,
    double[] RightN
)
{
    public int Samples => Settings.TwoPlates ? LeftN.Length : TotalN.Length;

    public double DurationS => Samples / Settings.RateHz;
}
