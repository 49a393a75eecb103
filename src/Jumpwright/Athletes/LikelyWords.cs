namespace Jumpwright.Athletes;

/// <summary>From which probability on something is called so in words (<c>common practice</c>).</summary>
public static class LikelyWords
{
    public const double AlmostCertain = 0.99;

    public const double VeryLikely = 0.90;

    public const double Plain = 0.75;
}
