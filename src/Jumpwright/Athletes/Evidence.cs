using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A measure and where it came from, so that every number can be traced.</summary>
public sealed record Evidence(Measure Measure, LocalDate Date, string File, int TrialNumber, Device? Device);
