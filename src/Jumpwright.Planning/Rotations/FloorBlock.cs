namespace Jumpwright.Planning.Rotations;

/// <summary>A block as the floor places it: kit by its number.</summary>
internal sealed record FloorBlock(Block Block, (int Kit, int Count)[] Kit)
{
    public int Seconds { get; } = Block.Seconds;
    public int Phase { get; } = Block.Phase;
}

/// <summary>An athlete's blocks on a floor, in the order they are done, and the seconds at which they begin.</summary>
internal readonly record struct Stand(FloorBlock[] Blocks, int[] Starts);
