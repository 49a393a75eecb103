namespace Jumpwright.Quantities;

/// <summary>The version that makes the numbers. Every stored measure carries it; a new one shows what it changes first.</summary>
public static class ProductVersion
{
    public const string Current = "0.1.0";
}
