using Jumpwright.App.Desk.Journals;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>A trial some of whose events a person set, with what measuring had found.</summary>
/// <param name="Automatic">The trial as measured without anybody's hand.</param>
/// <param name="Sha256">Its recording.</param>
/// <param name="Set">What was set, and why.</param>
/// <param name="Who">Who set it.</param>
/// <param name="At">When.</param>
/// <param name="Objection">Why the correction is not followed, so that the automatic trial counts; null when it is.</param>
public sealed record CorrectedTrial(
    Trial Automatic,
    string Sha256,
    CorrectionEntry Set,
    string Who,
    Instant At,
    string? Objection
);
