using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Athletes;

/// <summary>What a trial was measured with. Never trend across devices.</summary>
public enum Device
{
    ForcePlate,
    TwoForcePlates,
    MatOrGate,
    Camera,
}
