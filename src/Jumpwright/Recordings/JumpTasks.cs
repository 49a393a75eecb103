namespace Jumpwright.Recordings;

/// <summary>The ids of <see cref="JumpTask"/> in files and JSON.</summary>
public static class JumpTasks
{
    private static readonly string[] Ids =
    [
        "countermovement-jump",
        "squat-jump",
        "loaded-jump",
        "drop-jump",
        "repeated-hops",
        "drop-landing",
        "snap-down",
        "approach-jump",
        "box-jump",
    ];

    /// <summary>All ids, in the order of the enumeration.</summary>
    public static IReadOnlyList<string> All => Ids;

    public static string Id(this JumpTask task) => Ids[(int)task];

    /// <summary>The task with that id, or null.</summary>
    public static JumpTask? Parse(string? id)
    {
        int index = Array.IndexOf(Ids, id?.Trim());
        return index < 0 ? null : (JumpTask)index;
    }
}
