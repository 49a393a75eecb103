namespace Jumpwright.Simulation.Defects;

/// <summary>A way in which a good recording is spoiled on purpose. Some must be refused, some repaired with a warning.</summary>
/// <param name="Id">Kebab-case id.</param>
/// <param name="What">In words.</param>
/// <param name="Spoil">From the bytes of a good recording to those of the bad one.</param>
public sealed record Defect(string Id, string What, Func<byte[], byte[]> Spoil);
