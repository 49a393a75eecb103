namespace Jumpwright.Quantities;

/// <summary>Marks what a sentence says as a kind of reason, so that nobody has to tell reasons apart by their words.</summary>
public interface IReason;
