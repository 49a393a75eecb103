using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>One ruling for one athlete on one day, with its reason and source.</summary>
/// <param name="LimitId">Kebab-case id of the rule.</param>
/// <param name="Effect">What it does.</param>
/// <param name="Because">One sentence for the practitioner, with the date and what was seen.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Ruling(string LimitId, RulingEffect Effect, Sentence Because, Source Source);
