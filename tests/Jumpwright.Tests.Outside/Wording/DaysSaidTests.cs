using Jumpwright.App.Wording;

namespace Jumpwright.Tests.Outside.Wording;

public class DaysSaidTests
{
    [Theory]
    [InlineData("It ends on 2027-01-04.", "It ends on 4 Jan 2027.")]
    [InlineData("36 min are there in 2027-01-04-pm;", "36 min are there in the session of 4 Jan 2027, pm;")]
    [InlineData("file 2027-01-04-cmj-1.csv", "file 2027-01-04-cmj-1.csv")]
    [InlineData("on 2027-13-40", "on 2027-13-40")]
    public void DaysOfFiles_AreSaidAsPeopleDo_AndNothingElse(string sentence, string said) =>
        Assert.Equal(said, DaysSaid.In(sentence));
}
