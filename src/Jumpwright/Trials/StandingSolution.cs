using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// What the still stretches and the empty plate alone say of a stay's unknowns, for one size of sway: their mean and their
/// covariance. Every stretch has waves of its own and shares only weight and drift with the others, so that small inverses,
/// cosines and sines apart, stand for the whole matrix; the tail of a landing touches all of it, and is let in as one unknown more.
/// What ties the stretches together is let in afterwards.
/// </summary>
internal sealed class StandingSolution
{
    private const int N = Sway.Waves;
    private const int OfWindow = (2 * N * N) + (2 * N);

    /// <summary>No standing height is farther off, m: a prior so wide that it says nothing.</summary>
    private const double AnyPostureM = 5;

    /// <summary>Nothing drifts faster, N/s: likewise.</summary>
    private const double AnyDriftNS = 20;

    /// <summary>The zero's own slope is never known better, N/s.</summary>
    private const double LeastDriftNS = 0.02;

    private readonly StayModel _model;
    private readonly ArraySegment<double> _inverses;
    private readonly ArraySegment<double> _noise;
    private readonly double _weightN;
    private readonly double _v00;
    private readonly double _v01;
    private readonly double _v11;
    private readonly List<(int At, ArraySegment<double> Moves, double Variance)> _tails = [];

    public StandingSolution(
        StayModel model,
        ReadOnlySpan<StillEquations> stretches,
        ReadOnlySpan<LandingTail> tails,
        double blockVariance,
        EmptyPlate empty,
        double swayN,
        double noiseN,
        int index,
        Scratch scratch
    )
    {
        Index = index;
        _model = model;
        _weightN = model.MassKg * Gravity.MetresPerSecondSquared;
        _inverses = scratch.Noughts(stretches.Length * OfWindow);
        _noise = scratch.Noughts(model.Constants);
        model.ConstantVariances(noiseN, _noise);
        double per = 1 / blockVariance;
        double known = Math.Max(empty.DriftUncertaintyNS, LeastDriftNS);
        double drift = 1 / (known * known);
        double g00 = 0;
        double g01 = 0;
        double g11 = drift + (1 / (AnyDriftNS * AnyDriftNS));
        Span<double> right = stackalloc double[model.Size];
        right.Clear();
        right[StayModel.Drift] = drift * empty.DriftNS;
        double log = -2 * stretches.Length * ((N * Math.Log(swayN * swayN)) + Sway.LogVariances);
        for (int w = 0; w < stretches.Length; w++)
        {
            StillEquations e = stretches[w];
            log -= Invert(w, e, per, swayN * swayN);
            double late = Late(w);
            double free = per * _weightN * _weightN * e.Count;
            free -= per * _weightN * SymmetricMatrix.Dot(e.CosineSums, ByWeight(w));
            g00 += free;
            g01 += late * free;
            g11 += (late * late * free) + (per * (e.TimeSquares - SymmetricMatrix.Dot(e.SineTimes, ByTime(w))));
            int first = StayModel.First(w);
            SymmetricMatrix.AddScaled(right.Slice(first, N), e.CosineForce, per);
            SymmetricMatrix.AddScaled(right.Slice(first + N, N), e.SineForce, per);
            right[StayModel.Weight] += per * _weightN * e.ForceSum;
            right[StayModel.Drift] += per * ((model.MiddleTime(w) * e.ForceSum) + e.ForceTimes);
        }

        double determinant = (g00 * g11) - (g01 * g01);
        (_v00, _v01, _v11) = (g11 / determinant, -g01 / determinant, g00 / determinant);
        Mean = scratch.Noughts(model.Size);
        Covariances(right, Mean);
        LogEvidence = (SymmetricMatrix.Dot(Mean, right) + log - Math.Log(determinant)) / 2;
        foreach (LandingTail tail in tails)
        {
            LogEvidence += LetIn(tail, per, scratch);
        }
    }

    /// <summary>Which of the sizes of sway it is for.</summary>
    public int Index { get; }

    /// <summary>The unknowns.</summary>
    public ArraySegment<double> Mean { get; }

    /// <summary>Logarithm of how well they explain the recording, but for what all sizes share.</summary>
    public double LogEvidence { get; }

    /// <summary>Covariance of every unknown with row · unknowns.</summary>
    /// <param name="row">The row.</param>
    /// <param name="x">Receives them; noughts before.</param>
    public void Covariances(ReadOnlySpan<double> row, Span<double> x)
    {
        double a = row[StayModel.Weight];
        double b = row[StayModel.Drift];
        int windows = _model.Windows.Count;
        for (int w = 0; w < windows; w++)
        {
            int first = StayModel.First(w);
            if (!row.Slice(first, 2 * N).ContainsAnyExcept(0))
            {
                continue;
            }

            double along = SymmetricMatrix.Dot(ByWeight(w), row.Slice(first, N));
            a -= along;
            b -= (Late(w) * along) + SymmetricMatrix.Dot(ByTime(w), row.Slice(first + N, N));
        }

        double weight = (_v00 * a) + (_v01 * b);
        double drift = (_v01 * a) + (_v11 * b);
        x[StayModel.Weight] = weight;
        x[StayModel.Drift] = drift;
        for (int w = 0; w < windows; w++)
        {
            int first = StayModel.First(w);
            Span<double> cosines = x.Slice(first, N);
            Span<double> sines = x.Slice(first + N, N);
            if (row.Slice(first, 2 * N).ContainsAnyExcept(0))
            {
                SymmetricMatrix.Multiply(Cosines(w), row.Slice(first, N), cosines);
                SymmetricMatrix.Multiply(Sines(w), row.Slice(first + N, N), sines);
            }

            SymmetricMatrix.AddScaled(cosines, ByWeight(w), -(weight + (Late(w) * drift)));
            SymmetricMatrix.AddScaled(sines, ByTime(w), -drift);
            int posture = StayModel.Posture(w);
            x[posture] = row[posture] * AnyPostureM * AnyPostureM;
        }

        int constants = _model.FirstConstant;
        for (int k = 0; k < _noise.Count; k++)
        {
            x[constants + k] = row[constants + k] * _noise[k];
        }

        foreach ((int at, ArraySegment<double> moves, double variance) in _tails)
        {
            double shared = variance * (row[at] - SymmetricMatrix.Dot(row, moves));
            SymmetricMatrix.AddScaled(x, moves, -shared);
            x[at] += shared;
        }
    }

    /// <summary>
    /// Lets in the tail of a landing: what one newton of it would make of all others, and how large it is beside them. Gives the
    /// logarithm of what that adds to the evidence.
    /// </summary>
    private double LetIn(LandingTail tail, double per, Scratch scratch)
    {
        Span<double> right = stackalloc double[_model.Size];
        right.Clear();
        StillEquations shape = tail.Shape;
        int first = StayModel.First(tail.Window);
        SymmetricMatrix.AddScaled(right.Slice(first, N), shape.CosineForce, per);
        SymmetricMatrix.AddScaled(right.Slice(first + N, N), shape.SineForce, per);
        right[StayModel.Weight] = per * _weightN * shape.ForceSum;
        right[StayModel.Drift] = per * ((_model.MiddleTime(tail.Window) * shape.ForceSum) + shape.ForceTimes);
        ArraySegment<double> moves = scratch.Noughts(_model.Size);
        Covariances(right, moves);
        double usual = LandingTail.UsualN(_model.MassKg);
        double spread = LandingTail.SpreadN(_model.MassKg);
        double prior = 1 / (spread * spread);
        double known = prior + (per * tail.Squares) - SymmetricMatrix.Dot(right, moves);
        double seen = (prior * usual) + (per * tail.WithForce) - SymmetricMatrix.Dot(right, Mean);
        double mean = seen / known;
        int at = _model.Tail(tail.Window);
        SymmetricMatrix.AddScaled(Mean, moves, -mean);
        Mean.AsSpan()[at] = mean;
        _tails.Add((at, moves, 1 / known));
        return ((seen * mean) - (prior * usual * usual) - Math.Log(known / prior)) / 2;
    }

    /// <summary>Inverts what a stretch says of its waves; gives the logarithm of the determinant.</summary>
    private double Invert(int window, StillEquations e, double per, double swaySquare)
    {
        Span<double> cosines = Cosines(window);
        Span<double> sines = Sines(window);
        SymmetricMatrix.AddScaled(cosines, e.Cosines, per);
        SymmetricMatrix.AddScaled(sines, e.Sines, per);
        for (int j = 0; j < N; j++)
        {
            double prior = 1 / (swaySquare * Sway.Variances[j]);
            cosines[(j * N) + j] += prior;
            sines[(j * N) + j] += prior;
        }

        double log = SymmetricMatrix.Invert(cosines, N) + SymmetricMatrix.Invert(sines, N);
        Span<double> scaled = stackalloc double[N];
        scaled.Clear();
        SymmetricMatrix.AddScaled(scaled, e.CosineSums, per * _weightN);
        SymmetricMatrix.Multiply(cosines, scaled, ByWeight(window));
        scaled.Clear();
        SymmetricMatrix.AddScaled(scaled, e.SineTimes, per);
        SymmetricMatrix.Multiply(sines, scaled, ByTime(window));
        return log;
    }

    /// <summary>Drift acts on a stretch as on its middle: this many times as a relative change of the weight.</summary>
    private double Late(int window) => _model.MiddleTime(window) / _weightN;

    private Span<double> Cosines(int window) => _inverses.AsSpan(window * OfWindow, N * N);

    private Span<double> Sines(int window) => _inverses.AsSpan((window * OfWindow) + (N * N), N * N);

    private Span<double> ByWeight(int window) => _inverses.AsSpan((window * OfWindow) + (2 * N * N), N);

    private Span<double> ByTime(int window) => _inverses.AsSpan((window * OfWindow) + (2 * N * N) + N, N);
}
