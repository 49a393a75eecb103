using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Simulation.Motions;

/// <summary>Strings pieces together; each starts in the state in which the last one ended.</summary>
public sealed class MotionBuilder(double systemMassKg, Sway sway, double startS = 0)
{
    private const double G = Gravity.MetresPerSecondSquared;
    private readonly ImmutableArray<MotionPiece>.Builder _pieces = ImmutableArray.CreateBuilder<MotionPiece>();

    public double NowS { get; private set; } = startS;

    public BodyState Now { get; private set; }

    public Sway Sway => sway;

    /// <summary>State that standing (or holding) at a level has at an instant.</summary>
    public BodyState StandingAt(double timeS, double levelM = 0)
    {
        BodyState state = sway.At(timeS);
        return state with { DisplacementM = state.DisplacementM + levelM };
    }

    public void Stand(double durationS, double levelM = 0)
    {
        if (durationS > 0)
        {
            Add(new SwayPiece(NowS, NowS + durationS, levelM, sway));
        }
    }

    /// <summary>Starts in the air (off a box, out of a run-up) with that state.</summary>
    public void StartInAir(double displacementM, double velocityMS) =>
        Now = new BodyState(displacementM, velocityMS, -G);

    /// <summary>Adds a solved contact; false when the spline found none, or none that is accepted.</summary>
    public bool Contact(
        ReadOnlySpan<Knot> knots,
        ReadOnlySpan<Passage> passages,
        Func<ImmutableArray<PolynomialPiece>, bool>? accept = null
    )
    {
        ImmutableArray<PolynomialPiece> pieces = MotionSpline.Solve(NowS, Now, knots, passages, -G);
        if (pieces.IsEmpty || accept?.Invoke(pieces) == false)
        {
            return false;
        }

        foreach (PolynomialPiece piece in pieces)
        {
            Add(piece);
        }

        return true;
    }

    /// <summary>Free flight to a level on the way down; gives its duration, s.</summary>
    public double FlyTo(double displacementM)
    {
        double v = Now.VelocityMS;
        double inside = (v * v) + (2 * G * (Now.DisplacementM - displacementM));
        double duration = (v + Math.Sqrt(Math.Max(0, inside))) / G;
        FlyFor(duration);
        return duration;
    }

    public void FlyFor(double durationS) =>
        Add(new PolynomialPiece(NowS, NowS + durationS, false, Now.DisplacementM, Now.VelocityMS, -G, 0, 0, 0));

    public Motion Build() => new(systemMassKg, _pieces.ToImmutable());

    private void Add(MotionPiece piece)
    {
        _pieces.Add(piece);
        NowS = piece.ToS;
        Now = piece.At(piece.ToS);
    }
}
