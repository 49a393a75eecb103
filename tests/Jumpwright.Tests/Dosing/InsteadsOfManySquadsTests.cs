using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Tests.Prescribing;

namespace Jumpwright.Tests.Dosing;

/// <summary>What a card offers instead, for 500 squads drawn at random: symptoms, restrictions, screens and logs of all kinds.</summary>
public class InsteadsOfManySquadsTests(ITestOutputHelper output)
{
    [Fact]
    public void Instead_OnFiveHundredSquads_AsksNoTissueForMoreAndTheSoreOneForLess()
    {
        Catalogue catalogue = Catalogue.Standard;
        var known = catalogue.Exercises.Select(e => e.Id).ToHashSet(StringComparer.Ordinal);
        int offered = 0;
        int underPain = 0;
        int onTheEve = 0;
        int landings = 0;
        int lacking = 0;
        for (int squad = 0; squad < 500; squad++)
        {
            DrawnSquad drawn = TestedSquad.Draw(squad);
            HashSet<string> kit = [.. drawn.Squad.Kit.Select(k => k.Id)];
            foreach (History history in drawn.Athletes)
            {
                ImmutableArray<Ruling> rulings = SafetyRules.For(history, TestedSquad.Today, known);
                Profile profile = Profiling.Of(history, TestedSquad.Today);
                Ladder ladder = Ladders.For(profile, history, catalogue, TestedSquad.Today);
                var today = new OpenWork(ladder, rulings, catalogue, drawn.Squad.Kit);
                var sore = rulings.Select(r => r.Effect).OfType<TierAtMost>().Select(t => t.Tissue).ToHashSet();
                foreach (Exercise exercise in catalogue.Exercises)
                {
                    foreach (Exercise eve in Insteads.For(exercise, today, onFloor: false))
                    {
                        // Shortly before a fixture what is offered lands on no floor: on a box, or not at all.
                        Assert.NotEqual("floor", eve.Landing);
                        onTheEve++;
                    }

                    // The first whose dose stands is on the card, so that any of them may be.
                    foreach (Exercise instead in Insteads.For(exercise, today))
                    {
                        string id = instead.Id;
                        foreach (Tissue tissue in Enum.GetValues<Tissue>())
                        {
                            int before = exercise.Demand.GetValueOrDefault(tissue);
                            int after = instead.Demand.GetValueOrDefault(tissue);
                            Assert.True(
                                after <= before,
                                $"squad {squad}: {id} asks {tissue} for more than {exercise.Id}"
                            );
                            Assert.True(
                                Load(instead, after) <= Load(exercise, before),
                                $"squad {squad}: {id} loads {tissue} more than {exercise.Id}, rep for rep"
                            );
                        }

                        // A card doesn't know where it will hurt: low work on every tissue, no spring on an Achilles that may be sore.
                        Assert.True(instead.TopTier <= 1, $"squad {squad}: {id} for {exercise.Id} is no low work");
                        Assert.False(
                            exercise.Demand.GetValueOrDefault(Tissue.Achilles) > 0
                                && instead.Stage is Stage.AnkleStiffness or Stage.RunUp,
                            $"squad {squad}: {id} for {exercise.Id} springs"
                        );
                        Assert.DoesNotContain(
                            rulings,
                            r => r.Effect.Forbids(instead.FactsAt(instead.DropRangeM?.MinM))
                        );
                        // Nobody is sent to a box that the squad has not.
                        Assert.All(instead.Kit, k => Assert.Contains(k.Id, kit));
                        lacking += exercise.Regressions.Any(r => catalogue.Find(r)!.Kit.Any(k => !kit.Contains(k.Id)))
                            ? 1
                            : 0;
                        landings += instead.Landing == "floor" ? 1 : 0;
                        offered++;
                        underPain += sore.Count > 0 ? 1 : 0;
                    }
                }
            }
        }

        // The card offers half of the sets with no more reps, so rep for rep is the hardest reading.
        static int Load(Exercise exercise, int tier) =>
            tier * (exercise.Limb == "each" ? 2 * exercise.ContactsPerRep : exercise.ContactsPerRep);
        output.WriteLine($"{offered} offered, {underPain} of them to somebody with a sore tissue");
        Assert.True(onTheEve > 1000 && landings > 1000, $"{onTheEve}, {landings}: nothing to leave out on an eve");
        Assert.True(lacking > 1000, $"{lacking}: no squad lacked the kit of an easier step");
        Assert.True(underPain > 1000, $"{underPain}: the rule was not tested");
    }
}
