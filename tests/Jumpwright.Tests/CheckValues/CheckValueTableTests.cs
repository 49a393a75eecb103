namespace Jumpwright.Tests.CheckValues;

public class CheckValueTableTests
{
    [Fact]
    public void Table_AsShipped_HasEveryRowWithASource()
    {
        Assert.True(CheckValueTable.All.Count >= 120, $"{CheckValueTable.All.Count} rows");
        Assert.All(CheckValueTable.All.Values, row => Assert.False(string.IsNullOrWhiteSpace(row.Source), row.Id));
    }

    [Fact]
    public void Assert_ValueOutsideTolerance_Fails()
    {
        CheckValueTable.Assert("T1", row => row.Expected);
        Assert.ThrowsAny<Exception>(() => CheckValueTable.Assert("T1", row => row.Expected + (2 * row.Tolerance)));
    }
}
