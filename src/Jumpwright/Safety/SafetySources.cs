using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>The sources this room rests on, by what they are used for.</summary>
internal static class SafetySources
{
    /// <summary>Caution for the young, and for athletes over 100 kg.</summary>
    public static readonly Source Handbook = Bibliography.Get("handbook-potach-chu");

    /// <summary>Tendon pain may reach 5 of 10 during loading and settles by next morning; the bound of 2 is a setting of ours.</summary>
    public static readonly Source PainMonitoring = Bibliography.Get("silbernagel-2007");

    public static readonly Source CommonPractice = Bibliography.Get("common-practice");

    public static readonly Source House = Bibliography.Get("house-rule");
}
