using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Tests.Statistics;

/// <summary>
/// What R 4.2.2 said (psych, lme4): stored, so that the check runs where R is not installed; the running R is asked in the outside
/// tests. Table jumps-four-occasions.csv: dhammarstrom/exscidata (CC0), Sylta et al. 2016.
/// </summary>
public class SecondOpinionOfRTests
{
    /// <summary>Shrout and Fleiss 1979 print .17 .29 .71 .44 .62 .91.</summary>
    [Fact]
    public void IntraclassCorrelation_ShroutAndFleissTable_AllSixForms()
    {
        var icc = IntraclassCorrelation.Of(
            new double[,]
            {
                { 9, 2, 5, 8 },
                { 6, 1, 3, 2 },
                { 8, 4, 6, 8 },
                { 7, 1, 2, 6 },
                { 10, 5, 6, 9 },
                { 6, 2, 4, 7 },
            }
        );
        Assert.Equal(0.1657417684, icc.OneWaySingle, 9);
        Assert.Equal(0.2897637795, icc.RandomSingle, 9);
        Assert.Equal(0.7148407148, icc.FixedSingle, 9);
        Assert.Equal(0.4427971337, icc.OneWayMean, 9);
        Assert.Equal(0.6200505476, icc.RandomMean, 9);
        Assert.Equal(0.9093155424, icc.FixedMean, 9);
    }

    [Theory]
    [InlineData(4, 30.23454545, 3.470717786, 1.454805453, 168.8153537, 0.6425687697)]
    [InlineData(5, 29.72272727, 3.958913831, 1.380491378, 168.5701776, 0.6099117021)]
    public void RandomIntercept_FourOccasions_AsLme4(
        int column,
        double intercept,
        double between,
        double within,
        double criterion,
        double lastError
    )
    {
        string[][] rows = Rows(column);
        Assert.Equal(40, rows.Length);
        double[] Is(string occasion) => [.. rows.Select(r => r[2] == occasion ? 1.0 : 0)];
        RandomIntercept fit = RandomIntercept
            .Fit(
                [.. rows.Select(r => double.Parse(r[column]))],
                [.. rows.Select(r => r[0])],
                Is("meso1"),
                Is("meso2"),
                Is("meso3")
            )
            .Require();
        Assert.Equal(intercept, fit.Coefficients[0], 5);
        Assert.Equal(between, fit.BetweenSd, 4);
        Assert.Equal(within, fit.WithinSd, 4);
        Assert.Equal(criterion, fit.Criterion, 5);
        Assert.Equal(lastError, fit.StandardErrors[3], 4);
    }

    [Fact]
    public void RandomIntercept_NobodyTwice_IsRefused() =>
        Assert.False(RandomIntercept.Fit([1, 2, 3], ["a", "b", "c"]).TryGet(out _, out Refusal? _));

    private static string[][] Rows(int column)
    {
        using Stream stream = typeof(Nile).Assembly.GetManifestResourceStream("data/tables/jumps-four-occasions.csv")!;
        using var reader = new StreamReader(stream);
        return
        [
            .. reader
                .ReadToEnd()
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Skip(1)
                .Select(line => line.TrimEnd('\r').Split(','))
                .Where(cells => cells[column].Length > 0 && cells[column] != "NA"),
        ];
    }
}
