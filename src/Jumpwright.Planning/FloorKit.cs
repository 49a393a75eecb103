using System.Globalization;
using Jumpwright.Exercises;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>The kit of a day: of a kind that is short the pieces with the lowest numbers are here.</summary>
internal sealed class FloorKit(IReadOnlyDictionary<string, int>? counts)
{
    /// <summary>Kind and number of a piece (<c>plyo-box-2</c>); number 0 for what is none, such as the floor.</summary>
    public static (string Kind, int Number) Read(string piece)
    {
        int at = piece.LastIndexOf('-');
        return
            at > 0
            && int.TryParse(piece.AsSpan(at + 1), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? (piece[..at], number)
            : (piece, 0);
    }

    /// <summary>How many there are today; as many as one likes where nobody counted.</summary>
    public int CountOf(string kind) =>
        counts is not null && counts.TryGetValue(kind, out int count) ? Math.Max(0, count) : int.MaxValue;

    /// <summary>True when the piece is not here.</summary>
    public bool Misses(string piece)
    {
        (string kind, int number) = Read(piece);
        return number > CountOf(kind);
    }

    /// <summary>True when a piece of the turn's is not here.</summary>
    public bool Misses(RotationEntry turn) => turn.Station.Split('+').Any(Misses);

    /// <summary>The reason to leave an item out for which there is too little of its own kit, however long one waits.</summary>
    public FloorCutReason? Missing(FloorNeeds item)
    {
        foreach (KitNeed need in item.Kit)
        {
            if (CountOf(need.Id) < need.Count)
            {
                return FloorCutReason.KitMissing;
            }
        }

        return null;
    }
}
