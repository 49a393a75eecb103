using System.Collections.Immutable;
using Jumpwright.Prescribing.Reports;

namespace Jumpwright.App.Desk;

/// <summary>An athlete's report with its pictures drawn for a page.</summary>
/// <param name="Facts">What stands behind it.</param>
/// <param name="Report">What it says.</param>
/// <param name="Drawn">The pictures as SVG, by the name of their plot.</param>
public sealed record DrawnReport(Prescription Facts, Report Report, ImmutableDictionary<string, string> Drawn);
