using System.Collections.Immutable;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Prescribing.Reports;

/// <summary>A report in plain words with pictures: an athlete's, or a squad's.</summary>
/// <param name="Id">Athlete's id, or <c>squad</c>: the file's name.</param>
/// <param name="Title">Whose.</param>
/// <param name="AsOf">Only what happened up to that day counts.</param>
/// <param name="Sections">In order.</param>
/// <param name="Foot">What it is not.</param>
public sealed record Report(
    string Id,
    string Title,
    LocalDate AsOf,
    ImmutableArray<ReportSection> Sections,
    Sentence Foot
)
{
    /// <summary>What training of each quality typically brings, in centimetres; null of a squad, or where the outcome was not measured.</summary>
    public GainRanking? Gains { get; init; }
}
