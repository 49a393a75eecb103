namespace Jumpwright.Exercises;

/// <summary>A range of heights, m: lowest and highest that an exercise is done with.</summary>
/// <param name="MinM">Lowest, m.</param>
/// <param name="MaxM">Highest, m; not below <paramref name="MinM"/>.</param>
public readonly record struct HeightRange(double MinM, double MaxM)
{
    /// <summary>True when the height lies in the range, with a micrometre of grace for printed decimals.</summary>
    public bool Contains(double heightM) => heightM >= MinM - 1e-6 && heightM <= MaxM + 1e-6;
}
