namespace Jumpwright.Planning.Rotations;

/// <summary>An athlete's blocks on a floor, in the order they are done, and the seconds at which they begin.</summary>
internal readonly record struct Stand(FloorBlock[] Blocks, int[] Starts);
