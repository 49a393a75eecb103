using Jumpwright.Quantities;
using Jumpwright.Simulation.Motions;
using Jumpwright.Simulation.Tasks;

namespace Jumpwright.Tests.Simulation;

/// <summary>Checks that know nothing of how the motion was solved: only force, mass and Newton.</summary>
internal static class MotionChecks
{
    /// <summary>Double integration (Simpson within each 50 µs step) of the noise-free force.</summary>
    public static void AssertForceExplainsMotion(SimulatedMotion simulated)
    {
        Motion motion = simulated.Motion;
        double mass = motion.SystemMassKg;
        BodyState state = motion.At(motion.FromS);
        double v = state.VelocityMS;
        double x = state.DisplacementM;
        double worstV = 0;
        double worstX = 0;
        double worstImpulse = 0;
        double impulse = 0;
        foreach (MotionPiece piece in motion.Pieces)
        {
            int steps = Math.Max(1, (int)Math.Ceiling((piece.ToS - piece.FromS) * 20000));
            double h = (piece.ToS - piece.FromS) / steps;
            double Acceleration(double t) => (Force(piece, mass, t) / mass) - Gravity.MetresPerSecondSquared;
            for (int i = 0; i < steps; i++)
            {
                double t = piece.FromS + (i * h);
                double a0 = Acceleration(t);
                double a1 = Acceleration(t + (h / 2));
                double a2 = Acceleration(t + h);
                x += (v * h) + (h * h * (a0 + (2 * a1)) / 6);
                double gained = h * (a0 + (4 * a1) + a2) / 6;
                v += gained;
                impulse += gained * mass;
                BodyState own = piece.At(t + h);
                worstV = Math.Max(worstV, Math.Abs(own.VelocityMS - v));
                worstX = Math.Max(worstX, Math.Abs(own.DisplacementM - x));
                worstImpulse = Math.Max(worstImpulse, Math.Abs(impulse - (mass * (own.VelocityMS - state.VelocityMS))));
            }
        }

        Assert.True(worstV < 1e-6, $"velocity differs by {worstV}");
        Assert.True(worstX < 1e-6, $"displacement differs by {worstX}");
        Assert.True(worstImpulse < 1e-4, $"impulse and momentum differ by {worstImpulse} N s");
    }

    /// <summary>Force never negative; force, velocity and displacement continuous at every join.</summary>
    public static void AssertWhole(SimulatedMotion simulated)
    {
        Motion motion = simulated.Motion;
        for (int i = 0; i < motion.Pieces.Length; i++)
        {
            MotionPiece piece = motion.Pieces[i];
            for (int k = 0; k <= 200; k++)
            {
                double t = piece.FromS + ((piece.ToS - piece.FromS) * k / 200);
                double force = Force(piece, motion.SystemMassKg, t);
                Assert.True(force > -1e-6, $"force {force} N at {t} s");
            }

            if (i == 0)
            {
                continue;
            }

            MotionPiece before = motion.Pieces[i - 1];
            Assert.Equal(before.ToS, piece.FromS);
            BodyState left = before.At(before.ToS);
            BodyState right = piece.At(piece.FromS);
            Assert.Equal(left.DisplacementM, right.DisplacementM, 1e-9);
            Assert.Equal(left.VelocityMS, right.VelocityMS, 1e-9);
            Assert.Equal(
                Force(before, motion.SystemMassKg, before.ToS),
                Force(piece, motion.SystemMassKg, piece.FromS),
                1e-5
            );
        }
    }

    private static double Force(MotionPiece piece, double mass, double t) =>
        piece.InContact ? mass * (piece.At(t).AccelerationMS2 + Gravity.MetresPerSecondSquared) : 0;
}
