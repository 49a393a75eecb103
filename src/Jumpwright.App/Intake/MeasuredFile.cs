using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Intake;

/// <summary>What became of one listed recording.</summary>
/// <param name="Listed">The recording as its folder lists it.</param>
/// <param name="Sha256">Of the file's bytes, lower-case hexadecimal; null when it could not be opened.</param>
/// <param name="Measured">Its trials, or the sentence why there is none.</param>
internal sealed record MeasuredFile(ListedRecording Listed, string? Sha256, MeasuredRecording Measured);
