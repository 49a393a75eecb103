using Jumpwright.Quantities;

namespace Jumpwright.Athletes;

/// <summary>The test that a profile's summary names.</summary>
/// <param name="Quality">What it would settle.</param>
/// <param name="Said">As the summary's last sentence.</param>
public sealed record NamedTest(Quality Quality, Sentence Said);
