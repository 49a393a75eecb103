namespace Jumpwright.Safety.Symptoms;

/// <summary>Which rule a pain is judged by. Bone is never judged by the tendon rule.</summary>
internal enum PainRuleKind
{
    Tendon,
    JointOrMuscle,
    Bone,
    Arm,
}
