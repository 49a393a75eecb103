using Jumpwright.Recordings;

namespace Jumpwright.App.Desk;

/// <summary>A recording that was kept but not believed.</summary>
/// <param name="File">Relative to the squad folder.</param>
/// <param name="AthleteId">Whose, as far as somebody wrote it down.</param>
/// <param name="Sentence">What is wrong, where, and what to do.</param>
/// <param name="For">The kind of reason; null where a version that kept none refused it.</param>
public sealed record RefusedRecording(string File, string? AthleteId, string Sentence, RefusedFor? For);
