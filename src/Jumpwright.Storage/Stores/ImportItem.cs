using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Storage.Stores;

/// <summary>A recording of the folder on its way into the store.</summary>
/// <param name="Position">Place in the folder's order, from 1.</param>
/// <param name="Listed">As the folder lists it.</param>
/// <param name="Sha256">Its bytes; null when they can't be read.</param>
/// <param name="MeasurementId">The measurement it needs; null when it can't be read.</param>
/// <param name="Fault">Why it can't be read.</param>
internal sealed record ImportItem(
    int Position,
    ListedRecording Listed,
    string? Sha256,
    string? MeasurementId,
    Refusal? Fault
);
