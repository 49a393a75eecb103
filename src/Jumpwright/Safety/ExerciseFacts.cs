using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>What safety needs to know of an exercise, at the dose asked, to rule on it.</summary>
/// <param name="ExerciseId">Catalogue id.</param>
/// <param name="Stage">Stage of the progression.</param>
/// <param name="TierByTissue">Demand tier of one contact, 0 (none) to 3 (top), for every tissue.</param>
/// <param name="DropHeightM">Height stepped from, m; null when there is no drop.</param>
/// <param name="IsDepthJump">A drop followed at once by a jump.</param>
/// <param name="SingleLegLanding">A contact taken on one leg.</param>
/// <param name="HighIntensity">Top tier on any tissue, or a drop of 0.30 m or more.</param>
/// <param name="IsJump">False for lifts without a flight (contacts 0).</param>
/// <param name="ExternalLoad">A bar, band or other load is used.</param>
public sealed record ExerciseFacts(
    string ExerciseId,
    string Stage,
    ImmutableDictionary<Tissue, int> TierByTissue,
    double? DropHeightM,
    bool IsDepthJump,
    bool SingleLegLanding,
    bool HighIntensity,
    bool IsJump,
    bool ExternalLoad
)
{
    /// <summary>A contact is taken on the floor, not on a box; true where nobody says.</summary>
    public bool LandsOnFloor { get; init; } = true;
}
