using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Plans.Asking;

/// <summary>The reason that an exercise is wished for a quality.</summary>
/// <param name="Quality">What it trains first.</param>
/// <param name="Known">What is known of it in this athlete.</param>
public sealed record WantedFor(Quality Quality, FindingVerdict Known) : IReason;
