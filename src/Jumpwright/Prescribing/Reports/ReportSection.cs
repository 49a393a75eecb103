using System.Collections.Immutable;

namespace Jumpwright.Prescribing.Reports;

/// <summary>A heading with plain words and pictures.</summary>
/// <param name="Heading">In a few words.</param>
/// <param name="Paragraphs">In order.</param>
/// <param name="Plots">Pictures under them.</param>
public sealed record ReportSection(string Heading, ImmutableArray<string> Paragraphs, ImmutableArray<ReportPlot> Plots);
