namespace Jumpwright.Safety.Symptoms;

/// <summary>When a pain was felt, as far as the rules tell it apart.</summary>
internal enum PainTime
{
    Unsaid,
    DuringOrAfter,
    Morning,
    RestOrNight,
}
