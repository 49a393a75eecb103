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
        ("achilles achillessehne", AchillesTendon),
        ("calf calves soleus gastrocnemius wade waden", Calf),
        (
            "ankle heel foot feet toe toes midfoot metatarsal metatarsals arch plantar navicular sole forefoot fuß fuss füße ferse zeh zehe zehen sprunggelenk fußgelenk knöchel mittelfuß vorfuß",
            Foot
        ),
        ("shin shins tibia fibula schienbein wadenbein", Shin),
        ("knee knees kneecap patella patellar knie kniescheibe patellasehne", Knee),
        ("quad quads quadriceps thigh thighs oberschenkel", Thigh),
        ("hamstring hamstrings glute glutes buttock adductor adductors gesäß adduktoren", HipMuscle),
        (
            "hip hips groin pelvis pubic back spine lumbar sacrum sacroiliac tailbone hüfte hüften leiste becken rücken wirbelsäule kreuz steißbein",
            Hip
        ),
        (
            "shoulder shoulders elbow wrist wrists hand hands finger fingers thumb forearm arm arms schulter schultern ellbogen handgelenk unterarm daumen",
            ArmOnly
        ),
        ("neck nacken hals", Neck)
    );

    /// <summary>Words that name no place beside one that does.</summary>
    private static readonly ImmutableHashSet<string> Beside =
    [
        .. "left right both upper lower inner outer side front and the of in my a l r links rechts beide linker linke rechter rechte und der die das".Split(
            ' '
        ),
    ];

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
        string[] words = TextWords.Of(site.Name);
        PainReading[] known =
        [
            .. words.SelectMany(w => BySite.TryGetValue(w, out PainReading[]? readings) ? readings : []).Distinct(),
        ];
        // An arm alone leaves the legs free: only where every other word is understood.
        bool mayBeElsewhere =
            known.Length == 0
            || known.All(r => r.Kind == Arm) && words.Any(w => !BySite.ContainsKey(w) && !Beside.Contains(w));
        return mayBeElsewhere ? [.. Unknown.Union(known)] : known;
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
