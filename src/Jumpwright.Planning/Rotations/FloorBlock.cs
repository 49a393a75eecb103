namespace Jumpwright.Planning.Rotations;

/// <summary>A block as the floor places it: kit by its number.</summary>
internal sealed record FloorBlock(Block Block, (int Kit, int Count)[] Kit)
{
    public int Seconds { get; } = Block.Seconds;
    public int Phase { get; } = Block.Phase;
}
