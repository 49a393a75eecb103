using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>Work already done before the plan starts that still needs recovery.</summary>
/// <param name="Tissue">Which tissue was worked.</param>
/// <param name="EndUtc">When that session ended.</param>
/// <param name="RecoveryHours">Hours from then to the start of the next demanding work on that tissue.</param>
/// <param name="ExerciseId">What was done.</param>
public sealed record RecentWork(Tissue Tissue, Instant EndUtc, int RecoveryHours, string ExerciseId);
