using Jumpwright.Calculators;

namespace Jumpwright.Tests.Calculators;

public class BasisTests
{
    [Fact]
    public void EveryCalculator_ShowsFormulaSourcesAndDispute()
    {
        Assert.True(CalculatorList.All.Length >= 12);
        Assert.All(
            CalculatorList.All,
            b =>
            {
                Assert.NotEmpty(b.Formula.ToString());
                Assert.NotEmpty(b.Sources);
                Assert.False(string.IsNullOrWhiteSpace(b.Dispute), b.Id);
            }
        );
        Assert.Equal(CalculatorList.All.Length, CalculatorList.All.Select(b => b.Id).Distinct().Count());
    }
}
