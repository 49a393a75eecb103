namespace Jumpwright.App.Intake;

/// <summary>One row of a table and the line it begins on, from 1.</summary>
internal sealed record CsvRow(int Line, IReadOnlyList<string> Cells);
