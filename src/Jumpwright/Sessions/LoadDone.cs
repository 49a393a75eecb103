using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>What one athlete's session asked of a tissue, as planned and as logged, in contacts × tier.</summary>
/// <param name="SessionId">Session.</param>
/// <param name="AthleteId">Athlete.</param>
/// <param name="Tissue">Tissue; null: plain contacts.</param>
/// <param name="Planned">As planned.</param>
/// <param name="Done">As logged; null: nothing was logged, which is not the same as nothing done.</param>
/// <param name="PossiblyMore">What may have been done beside it: sets that were broken off and not counted.</param>
public sealed record LoadDone(
    string SessionId,
    string AthleteId,
    Tissue? Tissue,
    int Planned,
    int? Done,
    int PossiblyMore
);
