using Jumpwright.Quantities;

namespace Jumpwright.Progression;

/// <summary>How a test is done, or what stands in its place while it is closed.</summary>
/// <param name="Said">As the rest of a sentence.</param>
/// <param name="IsOpen">It is how the test is done.</param>
internal sealed record TestWay(Sentence Said, bool IsOpen);
