namespace Jumpwright.Bench.Fuzz;

/// <summary>How reading and measuring a spoiled file ended.</summary>
internal enum FuzzEnding
{
    ReadRefused,
    MeasureRefused,
    Measured,

    /// <summary>An exception: a defect of ours.</summary>
    Threw,
}
