namespace Jumpwright.Prescribing.Proposals;

/// <summary>What was seen in one trial of a test; null where it was not measured.</summary>
/// <param name="HeightM">Jump height, or rebound, m.</param>
/// <param name="ContactS">Ground contact, s.</param>
/// <param name="LandingFaults">Faults of the landing.</param>
/// <param name="Pain">Pain during, 0 to 10.</param>
/// <param name="PainSiteNew">Whether it hurt in a new place.</param>
public readonly record struct TrialSeen(
    double? HeightM = null,
    double? ContactS = null,
    int LandingFaults = 0,
    double? Pain = null,
    bool PainSiteNew = false
);
