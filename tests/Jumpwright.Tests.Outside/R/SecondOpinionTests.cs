using System.Diagnostics;
using System.Globalization;
using Jumpwright.Simulation.Chance;
using Jumpwright.Statistics;
using Jumpwright.Tests.Outside.House;
using Jumpwright.Tests.Statistics;

namespace Jumpwright.Tests.Outside.R;

/// <summary>What R says of the same data. Skipped where Debian's R is not installed.</summary>
public class SecondOpinionTests
{
    [Fact]
    public void StatisticsRoom_AgainstR_Agrees()
    {
        if (!File.Exists("/usr/bin/Rscript"))
        {
            Assert.Skip("R is not installed.");
        }

        var random = new SeededRandom(31);
        double level = 30;
        double[] made = new double[120];
        for (int i = 0; i < made.Length; i++)
        {
            level += 0.5 * random.Normal();
            made[i] = level + (1.1 * random.Normal());
        }

        string file = Path.Combine(Directory.CreateTempSubdirectory("jumpwright-r-").FullName, "series.csv");
        File.WriteAllLines(file, ["value", .. made.Select(v => v.ToString("R", CultureInfo.InvariantCulture))]);
        Dictionary<string, double> said = Ask(
            Repository.At("tests", "Jumpwright.Tests.Outside", "R", "reference.R"),
            Repository.At("tests", "Jumpwright.Tests", "Data", "tables"),
            file
        );

        double[] nile = Nile.Flow;
        var river = LocalLevel.Fit([.. Enumerable.Range(0, nile.Length).Select(i => (double)i)], nile);
        // StructTS starts from a wide prior, not from a diffuse one: agreement to a few per cent of a variance.
        Near(said["nile-walk"], river.WalkVariancePerDay, 0.05);
        Near(said["nile-noise"], river.NoiseVariance, 0.02);
        var observed = nile.Select((v, i) => new LevelObservation(i, v, said["nile-noise"])).ToArray();
        var model = new LocalLevel(said["nile-walk"]);
        Near(said["nile-smooth-50"], model.Smooth(observed)[49].Level, 1e-4);
        Near(said["nile-filter-100"], model.Filter(observed)[99].Level, 1e-4);

        var own = LocalLevel.Fit([.. Enumerable.Range(0, made.Length).Select(i => (double)i)], made);
        Near(said["made-walk"], own.WalkVariancePerDay, 0.05);
        Near(said["made-noise"], own.NoiseVariance, 0.05);
        LevelObservation[] seen = [.. made.Select((v, i) => new LevelObservation(i, v, said["made-noise"]))];
        Near(said["made-filter-last"], new LocalLevel(said["made-walk"]).Filter(seen)[^1].Level, 1e-4);

        if (said.TryGetValue("icc-ICC1", out double first))
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
            Near(first, icc.OneWaySingle, 1e-6);
            Near(said["icc-ICC2"], icc.RandomSingle, 1e-6);
            Near(said["icc-ICC3"], icc.FixedSingle, 1e-6);
            Near(said["icc-ICC1k"], icc.OneWayMean, 1e-6);
            Near(said["icc-ICC2k"], icc.RandomMean, 1e-6);
            Near(said["icc-ICC3k"], icc.FixedMean, 1e-6);
        }

        if (said.TryGetValue("lme4-reml", out double criterion))
        {
            string[][] rows =
            [
                .. File.ReadLines(
                        Repository.At("tests", "Jumpwright.Tests", "Data", "tables", "jumps-four-occasions.csv")
                    )
                    .Skip(1)
                    .Select(line => line.Split(','))
                    .Where(cells => cells[5].Length > 0 && cells[5] != "NA"),
            ];
            double[] Is(string occasion) => [.. rows.Select(r => r[2] == occasion ? 1.0 : 0)];
            RandomIntercept fit = RandomIntercept
                .Fit(
                    [.. rows.Select(r => double.Parse(r[5], CultureInfo.InvariantCulture))],
                    [.. rows.Select(r => r[0])],
                    Is("meso1"),
                    Is("meso2"),
                    Is("meso3")
                )
                .Require();
            Near(said["lme4-intercept"], fit.Coefficients[0], 1e-5);
            Near(said["lme4-between"], fit.BetweenSd, 1e-4);
            Near(said["lme4-within"], fit.WithinSd, 1e-4);
            Near(criterion, fit.Criterion, 1e-6);
        }
    }

    private static void Near(double expected, double actual, double share) =>
        Assert.True(
            Math.Abs(actual - expected) <= share * Math.Abs(expected),
            $"R says {expected}, Jumpwright {actual}"
        );

    private static Dictionary<string, double> Ask(params string[] arguments)
    {
        using Process process =
            Process.Start(
                new ProcessStartInfo("/usr/bin/Rscript", ["--vanilla", .. arguments])
                {
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                    UseShellExecute = false,
                }
            ) ?? throw new InvalidOperationException("R did not start.");
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(120_000), "R did not end.");
        Assert.True(process.ExitCode == 0, errors.GetAwaiter().GetResult());
        return output
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .ToDictionary(p => p[0], p => double.Parse(p[1], CultureInfo.InvariantCulture), StringComparer.Ordinal);
    }
}
