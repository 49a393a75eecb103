using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using static Jumpwright.Safety.Symptoms.PainRuleKind;

namespace Jumpwright.Safety.Symptoms;

/// <summary>
/// By which rules a pain is judged. A tissue counts as named only by somebody in a licensed role; any other pain goes by every rule
/// its site allows, so by the strictest. Which site allows which is <c>common practice</c>; the hip, groin, pelvis and back are read
/// as bone too, because stress injuries of the femoral neck, pelvis and vertebral arch hurt there.
/// </summary>
internal static class PainReadings
{
    private static readonly PainReading[] Unknown =
    [
        new(Bone, Tissue.Bone),
        new(JointOrMuscle, Tissue.Achilles),
        new(JointOrMuscle, Tissue.Patellar),
        new(JointOrMuscle, Tissue.Hip),
    ];

    private static readonly PainReading[] AchillesTendon = [new(Tendon, Tissue.Achilles)];
    private static readonly PainReading[] Calf = [new(JointOrMuscle, Tissue.Achilles)];
    private static readonly PainReading[] Foot = [new(Bone, Tissue.Bone), new(JointOrMuscle, Tissue.Achilles)];
    private static readonly PainReading[] Shin = [new(Bone, Tissue.Bone)];
    private static readonly PainReading[] Knee = [new(Tendon, Tissue.Patellar), new(JointOrMuscle, Tissue.Patellar)];
    private static readonly PainReading[] Thigh = [new(JointOrMuscle, Tissue.Patellar), new(JointOrMuscle, Tissue.Hip)];
    private static readonly PainReading[] HipMuscle = [new(JointOrMuscle, Tissue.Hip)];
    private static readonly PainReading[] Hip = [new(Bone, Tissue.Bone), new(JointOrMuscle, Tissue.Hip)];
    private static readonly PainReading[] ArmOnly = [new(Arm, Tissue.Bone)];
    private static readonly PainReading[] Neck = [new(Bone, Tissue.Bone), new(Arm, Tissue.Bone)];

    private static readonly ImmutableDictionary<string, PainReading[]> BySite = Table(
        ("achilles", AchillesTendon),
        ("calf calves soleus gastrocnemius", Calf),
        ("ankle heel foot feet toe toes midfoot metatarsal metatarsals arch plantar navicular sole forefoot", Foot),
        ("shin shins tibia fibula", Shin),
        ("knee knees kneecap patella patellar", Knee),
        ("quad quads quadriceps thigh thighs", Thigh),
        ("hamstring hamstrings glute glutes buttock adductor adductors", HipMuscle),
        ("hip hips groin pelvis pubic back spine lumbar sacrum sacroiliac tailbone", Hip),
        ("shoulder shoulders elbow wrist wrists hand hands finger fingers thumb forearm arm arms", ArmOnly),
        ("neck", Neck)
    );

    /// <summary>The rules that an episode's reports ask for.</summary>
    public static ImmutableArray<PainReading> Of(BodySite site, IEnumerable<SymptomReport> reports)
    {
        SymptomReport? named = reports
            .Where(r => LicensedRole.Names(r.NamedBy) && !string.IsNullOrWhiteSpace(r.Tissue))
            .LastOrDefault();
        return named is not null && Named(site, named.Tissue!) is { Length: > 0 } readings
            ? [.. readings]
            : [.. OfSite(site)];
    }

    private static PainReading[] OfSite(BodySite site)
    {
        PainReading[] known =
        [
            .. TextWords
                .Of(site.Name)
                .SelectMany(w => BySite.TryGetValue(w, out PainReading[]? readings) ? readings : [])
                .Distinct(),
        ];
        return known.Length > 0 ? known : Unknown;
    }

    /// <summary>What a licensed person's word for the tissue means; empty where it cannot be understood.</summary>
    private static PainReading[] Named(BodySite site, string tissue)
    {
        string[] words = TextWords.Of(tissue);
        bool Says(params ReadOnlySpan<string> any)
        {
            foreach (string word in any)
            {
                if (words.Contains(word, StringComparer.Ordinal))
                {
                    return true;
                }
            }

            return false;
        }

        if (Says("bone", "stress", "fracture", "periosteum", "apophysis", "growth", "plate"))
        {
            return [.. Shin.Union(OfSite(site).Where(r => r.Kind != Tendon))];
        }

        bool tendon = Says("tendon", "tendinopathy", "tendinitis", "achilles", "patellar");
        if (tendon && Says("achilles", "calf"))
        {
            return AchillesTendon;
        }

        if (tendon && Says("patellar", "patella", "quadriceps"))
        {
            return [new(Tendon, Tissue.Patellar)];
        }

        if (tendon && Says("hamstring", "adductor", "gluteal", "hip"))
        {
            return [new(Tendon, Tissue.Hip)];
        }

        if (
            Says("muscle", "joint", "ligament", "meniscus", "cartilage", "capsule")
            && OfSite(site).Where(r => r.Kind is JointOrMuscle).ToArray() is { Length: > 0 } soft
        )
        {
            return soft;
        }

        return [];
    }

    private static ImmutableDictionary<string, PainReading[]> Table(
        params (string Words, PainReading[] Readings)[] rows
    ) =>
        rows.SelectMany(row => row.Words.Split(' ').Select(word => (word, row.Readings)))
            .ToImmutableDictionary(x => x.word, x => x.Readings, StringComparer.Ordinal);
}
