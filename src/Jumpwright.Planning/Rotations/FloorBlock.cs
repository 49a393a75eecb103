namespace Jumpwright.Planning.Rotations;

/// <summary>A block as the floor places it: kit by its number.</summary>
internal sealed record FloorBlock(Block Block, (int Kit, int Count)[] Kit)
{
    /// <summary>From a block, with kit by its place among all kit.</summary>
    public static FloorBlock Of(Block block, IReadOnlyList<string> kits) =>
        new(block, [.. block.Kit.Select(k => (kits.ToList().IndexOf(k.Id), k.Count))]);

    public int Seconds { get; } = Block.Seconds;
    public int Phase { get; } = Block.Phase;
}
