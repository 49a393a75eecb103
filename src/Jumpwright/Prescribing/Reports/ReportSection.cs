using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Reports;

/// <summary>A heading with plain words and pictures.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="Heading">In a few words.</param>
/// <param name="Paragraphs">In order.</param>
/// <param name="Plots">Pictures under them.</param>
public sealed record ReportSection(
    ReportTopic Topic,
    Sentence Heading,
    ImmutableArray<ReportParagraph> Paragraphs,
    ImmutableArray<ReportPlot> Plots
);
