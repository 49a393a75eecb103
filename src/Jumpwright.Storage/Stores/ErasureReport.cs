namespace Jumpwright.Storage.Stores;

/// <summary>What erasing an athlete removed.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="Rows">Rows of the squad's tables.</param>
/// <param name="Recordings">Recordings, with their bytes and measures.</param>
/// <param name="Plans">Kept plans that named the athlete.</param>
/// <param name="RefusedWithoutAthlete">Refused recordings that name nobody: look whether they are theirs.</param>
public sealed record ErasureReport(string AthleteId, int Rows, int Recordings, int Plans, int RefusedWithoutAthlete);
