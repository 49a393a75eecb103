namespace Jumpwright.Prescribing.Reports;

/// <summary>What a section of a report is about.</summary>
public enum ReportTopic
{
    /// <summary>What limits them.</summary>
    Limits,

    /// <summary>What changed, and how sure that is.</summary>
    Change,

    /// <summary>How high, how heavy, how fast.</summary>
    Curves,

    /// <summary>What training typically brings.</summary>
    Gains,

    /// <summary>What to do next.</summary>
    Next,

    /// <summary>How far the numbers can be trusted.</summary>
    Noise,
}
