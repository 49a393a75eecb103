using Jumpwright.Quantities;

namespace Jumpwright.Plans.Asking;

/// <summary>The reason that an exercise is open and not yet owned: clean sessions of it are the next step on the ladder.</summary>
public sealed record OpenStep : IReason;
