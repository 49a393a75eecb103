namespace Jumpwright.Trials;

/// <summary>The edges of a recording, to be asked how likely an answer of the plate makes their samples.</summary>
/// <param name="forceN">Force, N.</param>
/// <param name="rateHz">Sampling rate, Hz.</param>
/// <param name="edges">The edges, in order of time.</param>
internal readonly ref struct AskedEdges(ReadOnlySpan<double> forceN, double rateHz, List<EdgeSide> edges)
{
    private readonly ReadOnlySpan<double> _forceN = forceN;
    private readonly double?[] _quiet = new double?[edges.Count];

    /// <summary>Indices of the first so many edges, take-offs before touch-downs: after them a plate that swings shows it.</summary>
    public int[] TakeOffsFirst(int most)
    {
        List<EdgeSide> all = edges;
        int[] first = [.. Enumerable.Range(0, Math.Min(all.Count, most))];
        Array.Sort(first, (a, b) => (all[b].Way, a).CompareTo((all[a].Way, b)));
        return first;
    }

    /// <summary>Logarithm of how likely an edge's samples are; of a quiet plate (no answer) it is kept once asked.</summary>
    public double Of(int edge, PlateAnswer? answer) =>
        answer is null ? _quiet[edge] ??= Evidence(edge, answer) : Evidence(edge, answer);

    /// <summary>The same of several edges.</summary>
    public double[] Of(int[] asked, PlateAnswer? answer)
    {
        double[] logs = new double[asked.Length];
        for (int e = 0; e < asked.Length; e++)
        {
            logs[e] = Of(asked[e], answer);
        }

        return logs;
    }

    private double Evidence(int edge, PlateAnswer? answer) =>
        EdgeFit.Evidence(edges[edge], _forceN, rateHz, answer, RingingEdges.LookedAtS);
}
