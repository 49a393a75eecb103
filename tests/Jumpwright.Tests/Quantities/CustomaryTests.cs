using Jumpwright.Quantities;
using Jumpwright.Simulation.Chance;

namespace Jumpwright.Tests.Quantities;

/// <summary>Inches and pounds: exact there and back, and what is set up is never more than was planned.</summary>
public class CustomaryTests
{
    [Theory]
    [InlineData(0.3048, 12)]
    [InlineData(0.9144, 36)]
    [InlineData(0, 0)]
    public void AFootIsTwelveInches_AYardThirtySix(double metres, double inches) =>
        Assert.Equal(inches, Customary.InchesOf(metres), 1e-12);

    [Fact]
    public void AHundredweightOf112Pounds_Is50Point8Kilograms() =>
        // NIST SP 811 (2008), appendix B.8: hundredweight (long, 112 lb) = 50.802 345 44 kg.
        Assert.Equal(50.80234544, Customary.KilogramsOf(112), 1e-12);

    [Fact]
    public void ThereAndBack_IsTheSame()
    {
        SeededRandom random = new(20270104);
        for (int i = 0; i < 1000; i++)
        {
            double value = random.Uniform(-500, 500);
            Assert.Equal(value, Customary.MetresOf(Customary.InchesOf(value)), Math.Abs(value) * 1e-15);
            Assert.Equal(value, Customary.KilogramsOf(Customary.PoundsOf(value)), Math.Abs(value) * 1e-15);
        }
    }

    [Fact]
    public void WhatIsSetUp_IsNeverMoreThanPlanned_AndLessByUnderOneStep()
    {
        SeededRandom random = new(20270105);
        for (int i = 0; i < 1000; i++)
        {
            double metres = random.Uniform(0.05, 1.2);
            double set = Customary.MetresOf(Customary.InchesToWrite(metres));
            Assert.InRange(set, metres - Customary.MetresOf(0.1), metres + 1e-9);
            double kilograms = random.Uniform(0, 200);
            double taken = Customary.KilogramsOf(Customary.LoadToTakeLb(kilograms));
            Assert.InRange(taken, kilograms - Customary.KilogramsOf(1), kilograms + 1e-6);
        }
    }

    [Theory]
    [InlineData(12)]
    [InlineData(17.5)]
    [InlineData(24)]
    public void ABoxOfWholeHalfInches_StaysWhatItIs(double inches) =>
        Assert.Equal(inches, Customary.InchesToWrite(Customary.MetresOf(inches)));

    [Fact]
    public void ADoubtInInches_IsNeverRoundedAway() =>
        // 1 cm is 0.394 in: rounded down it would look surer than it is.
        Assert.Equal(0.4, Customary.InchesToWrite(0.01));
}
