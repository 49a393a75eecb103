namespace Jumpwright.Safety.Symptoms;

/// <summary>Reads the when column of symptoms.csv.</summary>
internal static class PainTimes
{
    public static PainTime Read(string? when) =>
        when?.Trim().ToLowerInvariant() switch
        {
            "during" or "after" => PainTime.DuringOrAfter,
            "next-morning" => PainTime.Morning,
            "rest" or "night" => PainTime.RestOrNight,
            _ => PainTime.Unsaid,
        };
}
