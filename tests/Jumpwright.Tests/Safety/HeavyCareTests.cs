using Jumpwright.Athletes;
using Jumpwright.Safety;

namespace Jumpwright.Tests.Safety;

/// <summary>A heavy athlete's contacts are a prompt for care; what is closed is the drop, by a rule of its own.</summary>
public class HeavyCareTests
{
    private static History Weighing(double? kg) =>
        Patient.Well with
        {
            Athlete = Patient.Well.Athlete with { BodyMassKg = kg },
        };

    [Fact]
    public void OverAHundredKilograms_AsksForCare_AndNamesTheMass()
    {
        string said = HeavyCare.For(Weighing(108), Patient.Today)!;
        Assert.StartsWith("Body mass 108 kg, over 100 kg: ", said, StringComparison.Ordinal);
        Assert.EndsWith("rather do less.", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(100.0)]
    [InlineData(66.0)]
    // The drop of an unknown mass is capped; what is to be looked at is not known.
    [InlineData(null)]
    public void AHundredKilogramsOrLessOrUnknown_SaysNothing(double? kg) =>
        Assert.Null(HeavyCare.For(Weighing(kg), Patient.Today));

    [Fact]
    public void LineDrawnLower_AsksEarlier() =>
        Assert.NotNull(
            HeavyCare.For(
                Weighing(95) with
                {
                    Overrides = [new LimitOverride("heavy-athlete", null, 90, "Sam Coach", "asked to", null, null)],
                },
                Patient.Today
            )
        );
}
