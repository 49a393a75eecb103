namespace Jumpwright.Simulation.Tasks;

internal static class Attempts
{
    private const int Most = 400;

    /// <summary>Draws shapes until one is possible; the seed decides them all, so the answer is always the same.</summary>
    public static SimulatedMotion Until(Func<SimulatedMotion?> once, string what)
    {
        for (int i = 0; i < Most; i++)
        {
            if (once() is { } motion)
            {
                return motion;
            }
        }

        throw new InvalidOperationException(
            $"No {what} was found that keeps pushing on the plate; change the settings."
        );
    }
}
