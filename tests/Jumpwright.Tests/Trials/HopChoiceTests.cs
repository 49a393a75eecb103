using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>The best five hops count: where two are equally good, the mean may as well be that of the other.</summary>
public class HopChoiceTests
{
    private static readonly (double, double) Doubt = (0.0003, 0.0003);

    [Fact]
    public void TwoHopsOfOneIndex_MakeTheMeanOfContactsUnsureByHalfOfWhatTheyDifferBy()
    {
        // The sixth and seventh: one index, 40 ms of contact apart.
        Measure contact = ContactOf(0.200, 0.240);

        double apart = (0.240 - 0.200) / 5;
        Assert.InRange(contact.StandardUncertainty, 0.6 * apart, 0.8 * apart);
    }

    [Fact]
    public void AHopThatIsClearlyWorse_LeavesTheMeanSure()
    {
        Measure contact = ContactOf(0.200, 0.240, worseBy: 0.05);

        Assert.InRange(contact.StandardUncertainty, 0.0001, 0.0002);
    }

    private static Measure ContactOf(double last, double other, double worseBy = 0)
    {
        const double index = 1.0;
        HopContact[] hops =
        [
            HopOf(0.18, 2),
            HopOf(0.17, 1.5),
            HopOf(0.18, 1.5),
            HopOf(0.19, 1.5),
            HopOf(0.20, 1.5),
            HopOf(last, index),
            HopOf(other, index - worseBy),
        ];
        var list = new MeasureList();
        HopMeans.Add(list, hops, [.. hops.Select(_ => Doubt)], "test", null);
        return list.Find(MeasureNames.ContactTime)!;
    }

    private static HopContact HopOf(double contactS, double index) =>
        Hops.Of(contactS, Math.Sqrt(8 * index * contactS / 9.80665));
}
