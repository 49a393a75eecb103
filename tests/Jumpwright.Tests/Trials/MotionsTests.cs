using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>Four steps of the motion at once are the same four steps one after the other.</summary>
public class MotionsTests
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const double StepS = 0.001;
    private const double PerKg = 1 / 71.0;

    private static double[] Force(int count)
    {
        var chance = new Random(count);
        return [.. Enumerable.Range(0, count).Select(_ => 1500 * chance.NextDouble())];
    }

    [Fact]
    public void StepsOfAnyNumber_LeadWhereSingleStepsDo()
    {
        for (int count = 1; count < 40; count++)
        {
            double[] force = Force(count);
            double[] velocity = new double[count];
            double[] position = new double[count];
            (velocity[0], position[0]) = (0.7, -0.2);
            Motions.Integrate(force, velocity, position, PerKg, StepS);
            (double v, double x) = (0.7, -0.2);
            for (int i = 1; i < count; i++)
            {
                (v, x) = Step(v, x, force[i - 1], force[i], StepS);
                Assert.Equal(v, velocity[i], 1e-13);
                Assert.Equal(x, position[i], 1e-13);
            }
        }
    }

    [Fact]
    public void TheWayBack_IsTheWayThere()
    {
        for (int count = 1; count < 40; count++)
        {
            double[] force = Force(count);
            double[] velocity = new double[count];
            double[] position = new double[count];
            (velocity[0], position[0]) = (0.7, -0.2);
            Motions.Integrate(force, velocity, position, PerKg, StepS);
            double[] back = new double[count];
            double[] placed = new double[count];
            (back[^1], placed[^1]) = (velocity[^1], position[^1]);
            Motions.IntegrateBack(force, back, placed, PerKg, StepS);
            for (int i = 0; i < count; i++)
            {
                Assert.Equal(velocity[i], back[i], 1e-13);
                Assert.Equal(position[i], placed[i], 1e-13);
            }
        }
    }

    /// <summary>Acceleration that goes straight from one value to the next, integrated once and twice.</summary>
    private static (double V, double X) Step(double v, double x, double fromN, double toN, double s)
    {
        double from = (fromN * PerKg) - G;
        double to = (toN * PerKg) - G;
        return (v + (s * (from + to) / 2), x + (v * s) + (s * s * ((from / 3) + (to / 6))));
    }
}
