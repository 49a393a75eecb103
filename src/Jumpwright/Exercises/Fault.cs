namespace Jumpwright.Exercises;

/// <summary>A common fault and its mend.</summary>
public sealed record Fault(string Seen, string Fix);
