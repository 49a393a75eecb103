using Jumpwright.Recordings;
using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>A plate that rings on after take-off hides when a foot left it: such hops are named, not passed off as sure.</summary>
public class RingingHopsTests
{
    [Fact]
    public void Hops_WhoseEdgesRing_AreNamed_AndTheMeansAreDoubtfulWhereTheyCount()
    {
        int named = 0;
        int doubtful = 0;
        for (int i = 0; i < 200; i++)
        {
            SimulatedCase hops = Population.Varied(JumpTask.RepeatedHops, 20270104, i);
            Trial trial = Recording
                .From(hops.Bytes)
                .Then(recording => Measuring.Of(recording, JumpTask.RepeatedHops))
                .Require()[0];
            if (!trial.Warnings.Any(w => w.StartsWith("The plate rings where hops", StringComparison.Ordinal)))
            {
                Assert.DoesNotContain(Cautions.Ringing, trial.Warnings);
                continue;
            }

            Assert.Contains("ringing", hops.Difficulties, StringComparison.Ordinal);
            named++;
            if (trial.Warnings.Contains(Cautions.Ringing))
            {
                doubtful++;
                Assert.Contains(MeasureNames.ContactTime, trial.Doubtful);
                Assert.Contains(MeasureNames.JumpHeightFlightTime, trial.Doubtful);
            }
        }

        Assert.True(named > 0, "no hop of 200 ringing plates was named");
        Assert.True(doubtful < named, "hops that do not count must not make the means doubtful");
    }
}
