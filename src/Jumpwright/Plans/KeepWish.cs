namespace Jumpwright.Plans;

/// <summary>
/// What it is worth that an item of an earlier plan stays as it was, so that a plan made anew changes as little as it can;
/// or, with negative points, what a new item costs.
/// </summary>
/// <param name="SessionId">Session.</param>
/// <param name="AthleteId">Athlete.</param>
/// <param name="ExerciseId">Exercise.</param>
/// <param name="Sets">Sets it had; 0: it was not there.</param>
/// <param name="ItemPoints">Points if it is done at all.</param>
/// <param name="SetsPoints">Points more if it is done with the same sets.</param>
public sealed record KeepWish(
    string SessionId,
    string AthleteId,
    string ExerciseId,
    int Sets,
    int ItemPoints,
    int SetsPoints
)
{
    /// <summary>Points at so many sets.</summary>
    public int PointsOf(int sets) => sets == 0 ? 0 : ItemPoints + (sets == Sets ? SetsPoints : 0);
}
