using Jumpwright.Recordings;
using Jumpwright.Simulation.Foreign;
using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>Plates that answer as a spring and damper: reckoned here by small steps of the equation itself.</summary>
public class RingingPlateTests
{
    private const double LoadN = 700;
    private const double PushN = 1500;
    private const double StepS = 0.00002;

    [Theory]
    [InlineData(1000, 160, 0.08)]
    [InlineData(1000, 230, 0.15)]
    [InlineData(2000, 300, 0.2)]
    public void EdgesThroughASpring_AreReadWhereTheForceHasThem(double rateHz, double hz, double damping)
    {
        const int recordings = 12;
        double bias = 0;
        int held = 0;
        for (int k = 0; k < recordings; k++)
        {
            var chance = new Random(k);
            double takeOff = 0.4 + (chance.NextDouble() / rateHz);
            double touchDown = takeOff + 0.45 + (chance.NextDouble() / rateHz);
            double[] force = Recording(rateHz, hz, damping, takeOff, touchDown, chance);
            List<Contact> contacts = FlightDetection.Contacts(
                force,
                rateHz,
                new PlateLevels(0, LoadN, 1, true),
                emptyNoiseN: 1
            );
            Assert.Equal(2, contacts.Count);
            foreach ((Instant found, double trueS) in Both(contacts, takeOff, touchDown))
            {
                double off = (found.Sample / rateHz) - trueS;
                bias += off / (2 * recordings);
                held += Math.Abs(off) <= 2 * found.UncertaintyS ? 1 : 0;
                Assert.InRange(Math.Abs(off), 0, (4 * found.UncertaintyS) + 0.0001);
                Assert.InRange(found.UncertaintyS, 0, 0.0006);
            }
        }

        Assert.InRange(Math.Abs(bias), 0, 0.00015);
        Assert.InRange(held, (int)(0.8 * 2 * recordings), 2 * recordings);
    }

    [Fact]
    public void APlateTooSlowForItsRinging_MakesNoHeightWrongUnsaid()
    {
        CaseResult result = Validation.Examine(ForeignPopulation.Varied(JumpTask.CountermovementJump, 20270104, 35));
        Assert.Null(result.Refusal);
        Assert.Empty(result.SilentFailures());
        ComparedValue flight = result.Values.Single(v => v.Name == MeasureNames.FlightTime);
        Assert.InRange(Math.Abs(flight.Error), 0, 0.0015);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    public void TheTableOfASpring_IsItsEquation(int index)
    {
        double damping = SpringAnswer.Damping(index);
        ReadOnlySpan<double> table = SpringAnswer.Table(index, -1);
        double y = 0;
        double v = 0;
        const double step = 0.0005;
        int column = 2; // the power 1.0
        for (int k = 1; k <= 40_000; k++)
        {
            double t = (k - 0.5) * step;
            v += step * (t - y - (2 * damping * v));
            y += step * v;
            if (k % 2_000 == 0)
            {
                int row = SpringAnswer.EdgeRow + (int)Math.Round(k * step * SpringAnswer.Rows);
                Assert.InRange(table[(row * SpringAnswer.Columns) + column] - y, -0.02, 0.02);
            }
        }
    }

    private static IEnumerable<(Instant Found, double TrueS)> Both(
        List<Contact> contacts,
        double takeOff,
        double touchDown
    ) => [(contacts[0].TakeOff!.Value, takeOff), (contacts[1].TouchDown!.Value, touchDown)];

    private static double[] Recording(
        double rateHz,
        double hz,
        double damping,
        double takeOff,
        double touchDown,
        Random chance
    )
    {
        double[] force = new double[(int)(1.3 * rateHz)];
        double w = 2 * Math.PI * hz;
        double y = LoadN;
        double v = 0;
        int next = 0;
        for (double t = 0; next < force.Length; t += StepS)
        {
            while (next < force.Length && next / rateHz <= t)
            {
                double normal =
                    Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
                force[next++] = y + normal;
            }

            v += StepS * w * ((w * (Force(t, takeOff, touchDown) - y)) - (2 * damping * v));
            y += StepS * v;
        }

        return force;
    }

    private static double Force(double t, double takeOff, double touchDown)
    {
        if (t < takeOff)
        {
            double left = Math.Min((takeOff - t) / 0.06, 1);
            return (LoadN * Math.Min((takeOff - t) / 0.06, 1)) + ((PushN - LoadN) * left * (1 - left) * 4);
        }

        double since = t - touchDown;
        return since <= 0 ? 0 : PushN * (1 - Math.Exp(-since / 0.03));
    }
}
