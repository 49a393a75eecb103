using Jumpwright.Recordings;
using Jumpwright.Simulation.Devices;

namespace Jumpwright.Simulation.Validating;

/// <summary>A recording with its truth, ready to be measured.</summary>
/// <param name="Name">Group, number: enough to make it again.</param>
/// <param name="Task">What is asked.</param>
/// <param name="RateHz">Sampling rate.</param>
/// <param name="Difficulties">What was added, in words.</param>
/// <param name="Bytes">The file.</param>
/// <param name="Truth">What is so.</param>
public sealed record SimulatedCase(
    string Name,
    JumpTask Task,
    double RateHz,
    string Difficulties,
    byte[] Bytes,
    Truth Truth
);
