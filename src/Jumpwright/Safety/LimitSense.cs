namespace Jumpwright.Safety;

/// <summary>Which way a limit closes.</summary>
public enum LimitSense
{
    /// <summary>A lower value is tighter.</summary>
    AtMost,

    /// <summary>A higher value is tighter.</summary>
    AtLeast,
}
