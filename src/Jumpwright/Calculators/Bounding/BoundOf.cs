namespace Jumpwright.Calculators.Bounding;

/// <summary>What may not go far above what was measured.</summary>
public enum BoundOf
{
    ExternalLoad,
    RunUpSpeed,
}
