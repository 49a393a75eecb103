namespace Jumpwright.Plans;

/// <summary>
/// A heavy exercise and a light fast one, done in turn. The heavy one is only done with its light partner, both with the
/// same number of sets.
/// </summary>
/// <param name="SessionId">Which session.</param>
/// <param name="HeavyExerciseId">For example the fast heavy hex-bar pull.</param>
/// <param name="LightExerciseId">For example the light hex-bar jump.</param>
/// <param name="RestS">Rest from the heavy set to the light one, s.</param>
/// <param name="Points">What the pair is worth beyond its items.</param>
public sealed record ContrastPair(
    string SessionId,
    string HeavyExerciseId,
    string LightExerciseId,
    int RestS,
    int Points
)
{
    /// <summary>Its id within an athlete's session.</summary>
    public string Id => $"{HeavyExerciseId}+{LightExerciseId}";
}
