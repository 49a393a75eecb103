using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>Tissues in the words of sentences.</summary>
internal static class TissueWords
{
    public static Sentence Of(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => $"Achilles tendon, calf and ankle",
            Tissue.Patellar => $"patellar tendon and knee extensors",
            Tissue.Hip => $"hip",
            _ => $"bone",
        };
}
