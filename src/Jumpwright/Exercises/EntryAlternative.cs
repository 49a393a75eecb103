namespace Jumpwright.Exercises;

/// <summary>Another test that settles the same criterion, in the criterion's sense, with its own threshold.</summary>
/// <param name="Test">A measure name of the contract or a screen's test id.</param>
/// <param name="Task">For a measure: the task it must come from.</param>
/// <param name="Value">Threshold in the test's unit.</param>
/// <param name="Unit">Unit symbol.</param>
/// <param name="SourceId">Where the threshold comes from.</param>
public sealed record EntryAlternative(string Test, string? Task, double Value, string Unit, string SourceId);
