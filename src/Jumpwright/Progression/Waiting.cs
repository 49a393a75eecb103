using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Progression;

/// <summary>Tests that are not proposed today, because a ruling forbids them.</summary>
public static class Waiting
{
    /// <summary>True where what would settle something says no more than that this ruling forbids it now.</summary>
    public static bool For(Ruling ruling, Sentence? test)
    {
        ArgumentNullException.ThrowIfNull(ruling);
        return test == CriterionJudge.Waits(ruling.Because);
    }
}
