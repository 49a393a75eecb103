using Jumpwright.Quantities;

namespace Jumpwright.Athletes;

/// <summary>The test that a profile's summary names.</summary>
/// <param name="Quality">What it would settle.</param>
/// <param name="Said">As the summary's last sentence.</param>
public sealed record NamedTest(Quality Quality, Sentence Said)
{
    /// <summary>What comes before everything else.</summary>
    internal static NamedTest First(Quality quality, Sentence what) => new(quality, $"First: {what:small}.");

    /// <summary>How what nobody tested is tested.</summary>
    internal static NamedTest OfUntested(Quality quality, Sentence what) =>
        new(quality, $"To test {QualityNames.Of(quality)}: {what:small open}.");

    /// <summary>What would settle what is not known well enough.</summary>
    internal static NamedTest Settling(Quality quality, Sentence what) => new(quality, $"{what}.");
}
