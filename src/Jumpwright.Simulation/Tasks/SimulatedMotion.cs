using System.Collections.Immutable;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>A solved motion and what it was meant as.</summary>
/// <param name="Task">What the athlete does.</param>
/// <param name="BodyMassKg">The athlete alone, kg.</param>
/// <param name="ExternalLoadKg">Held or worn, kg.</param>
/// <param name="Motion">The motion of the whole system.</param>
/// <param name="OnsetS">First instant of the jump's movement; null where none is defined (off a box, out of a run-up).</param>
/// <param name="PropulsionFromS">Start of propulsion where velocity does not cross zero there (squat jump); else null.</param>
/// <param name="Contacts">Contacts of the jump itself, in order: from touch-down (or onset) to take-off.</param>
/// <param name="LandingS">Touch-down after the last flight; null when it is off the plate.</param>
/// <param name="UnwantedDipPct">Squat jump: the dip that was put in, % of system weight.</param>
/// <param name="LandsElsewhere">True when the last flight ends off the plate (box, run-through).</param>
public sealed record SimulatedMotion(
    JumpTask Task,
    double BodyMassKg,
    double ExternalLoadKg,
    Motion Motion,
    double? OnsetS,
    double? PropulsionFromS,
    ImmutableArray<ContactSpan> Contacts,
    double? LandingS,
    double? UnwantedDipPct = null,
    bool LandsElsewhere = false
);
