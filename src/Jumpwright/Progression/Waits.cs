using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Progression;

/// <summary>The reason of a test or step that is not for now.</summary>
/// <param name="For">The ruling that forbids it; null where it waits for a step before it.</param>
public sealed record Waits(Ruling? For) : IReason;
