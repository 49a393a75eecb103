using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>A sentence says that a recording was refused, and for what.</summary>
/// <param name="For">The kind of reason.</param>
public sealed record RefusalReason(RefusedFor For) : IReason;
