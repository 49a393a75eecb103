using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>Work already done before the plan starts that still needs recovery.</summary>
public sealed record RecentWork(Tissue Tissue, Instant EndUtc, int RecoveryHours, string ExerciseId);
