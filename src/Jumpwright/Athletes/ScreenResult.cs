using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A test or screen typed by hand (screens.csv).</summary>
public sealed record ScreenResult(
    string AthleteId,
    LocalDate Date,
    string Test,
    Side Side,
    double Value,
    string Unit,
    int? TrialNumber,
    string? Assessor,
    string? Note
);
