using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>Edges of the force of every roundness, whose end is known.</summary>
public class EdgeFitTests
{
    private const double LoadN = 700;

    [Theory]
    [InlineData(0.8)]
    [InlineData(1.0)]
    [InlineData(1.3)]
    [InlineData(1.6)]
    public void AnEdgeOfAnyPower_EndsWithinThreeOfItsUncertainties_AndThoseAreSmall(double power)
    {
        var chance = new Random(7);
        double sum = 0;
        int held = 0;
        const int edges = 60;
        for (int k = 0; k < edges; k++)
        {
            double end = 60 + chance.NextDouble();
            double overS = 0.03 + (0.05 * chance.NextDouble());
            double[] force = Edge(end, 1000, overS, power, 1, chance);
            Instant found = EdgeFit.Of(new EdgeSide(63, 1, 0, 1, LoadN), force, 1000)!.Value;
            double offS = (found.Sample - end) / 1000;
            sum += offS;
            held += Math.Abs(offS) <= 2 * found.UncertaintyS ? 1 : 0;
            Assert.InRange(Math.Abs(offS), 0, (3.5 * found.UncertaintyS) + 0.0001);
            Assert.InRange(found.UncertaintyS, 0, 0.001);
        }

        Assert.InRange(Math.Abs(sum / edges), 0, 0.00025);
        Assert.InRange(held, (int)(0.85 * edges), edges);
    }

    [Theory]
    [InlineData(200)]
    [InlineData(250)]
    public void AtALowRate_AnEdgeThatIsOverInTwoSamples_IsNoSurerThanItIsTrue(double rateHz)
    {
        var chance = new Random(11);
        int held = 0;
        double most = 0;
        const int edges = 200;
        for (int k = 0; k < edges; k++)
        {
            double end = 60 + chance.NextDouble();
            double overS = 0.008 + (0.017 * chance.NextDouble());
            double[] force = Edge(end, rateHz, overS, 0.8 + (0.8 * chance.NextDouble()), 1, chance);
            int first = 50;
            while (force[first] > 6)
            {
                first++;
            }

            Instant found = EdgeFit.Of(new EdgeSide(first, 1, 0, 1, LoadN), force, rateHz)!.Value;
            double off = Math.Abs(found.Sample - end) / rateHz / found.UncertaintyS;
            held += off <= 2 ? 1 : 0;
            most = Math.Max(most, off);
        }

        // A power of time through the steep part and its end at once was up to twelve of its uncertainties off.
        Assert.InRange(held, (int)(0.9 * edges), edges);
        Assert.InRange(most, 0, 5);
    }

    [Fact]
    public void ARounderEdge_IsLessSure()
    {
        double[] straight = Edge(60.3, 1000, 0.05, 1, 2, new Random(3));
        double[] round = Edge(60.3, 1000, 0.05, 1.6, 2, new Random(3));
        Assert.True(
            EdgeFit.Of(new EdgeSide(63, 1, 0, 2, LoadN), straight, 1000)!.Value.UncertaintyS
                < EdgeFit.Of(new EdgeSide(63, 1, 0, 2, LoadN), round, 1000)!.Value.UncertaintyS
        );
    }

    [Fact]
    public void TooFewSamplesForAnEdge_AreNotFitted() =>
        Assert.Null(EdgeFit.Of(new EdgeSide(1, 1, 0, 1, LoadN), [700.0, 0, 0], 200));

    /// <summary>A force that ends like the time left to a power, with noise; nothing after it.</summary>
    private static double[] Edge(double end, double rateHz, double overS, double power, double noiseN, Random chance)
    {
        var force = new double[120];
        for (int i = 0; i < force.Length; i++)
        {
            double left = (end - i) / rateHz;
            double part =
                left <= 0 ? 0
                : left >= overS ? 1
                : Math.Pow(Math.Sin(Math.PI / 2 * left / overS), power);
            double normal =
                Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
            force[i] = (2 * LoadN * part) + (noiseN * normal);
        }

        return force;
    }
}
