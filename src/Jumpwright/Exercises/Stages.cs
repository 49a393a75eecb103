using System.Collections.Immutable;

namespace Jumpwright.Exercises;

/// <summary>The ids of <see cref="Stage"/> in files and their names on screens.</summary>
public static class Stages
{
    private static readonly ImmutableArray<string> Ids =
    [
        "landing",
        "ankle-stiffness",
        "push-to-box",
        "floor-jump",
        "resisted",
        "shock",
        "continuous-single-leg",
        "run-up",
    ];

    /// <summary>All ids, in the trade's order.</summary>
    public static ImmutableArray<string> All => Ids;

    public static string Id(this Stage stage) => Ids[(int)stage];

    /// <summary>The stage with that id, or null.</summary>
    public static Stage? Parse(string? id) => Ids.IndexOf(id ?? "") is var index && index >= 0 ? (Stage)index : null;
}
