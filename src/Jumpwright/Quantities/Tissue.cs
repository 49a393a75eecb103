namespace Jumpwright.Quantities;

/// <summary>A tissue whose load is counted apart from the others: no single number ranks exercises.</summary>
public enum Tissue
{
    /// <summary>Achilles tendon, calf and ankle.</summary>
    Achilles,

    /// <summary>Patellar tendon and knee extensors.</summary>
    Patellar,

    /// <summary>Hip: flexors, adductors, hamstrings and the joint.</summary>
    Hip,

    /// <summary>Bone: tibia, foot, spine under impact.</summary>
    Bone,
}
