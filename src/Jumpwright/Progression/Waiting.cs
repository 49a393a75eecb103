using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Progression;

/// <summary>Tests that are not proposed today, because a ruling forbids them.</summary>
public static class Waiting
{
    /// <summary>True where what would settle something waits for just this ruling.</summary>
    public static bool For(Ruling ruling, Sentence? test) => test?.Reason is Waits { For: { } by } && by == ruling;
}
