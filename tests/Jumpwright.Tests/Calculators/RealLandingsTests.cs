using System.Collections.Immutable;
using System.IO.Compression;
using System.Text.Json;
using Jumpwright.Calculators.Landings;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Tests.Trials;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Calculators;

/// <summary>
/// The spring and damper tried on people: fifteen landings on both feet of five people (J. Adams 2020,
/// doi:10.13140/RG.2.2.21957.47849; CC BY-SA 4.0), three each, all from one box, so that only the small differences of the real
/// fall tell spring from damper. Each landing is predicted from the same person's two others.
/// </summary>
public class RealLandingsTests(ITestOutputHelper output)
{
    private const string Archive = "drop-landings/recordings.zip";

    private static (double MassKg, MeasuredLanding[] Landings)[] People() =>
        [
            .. Enumerable
                .Range(1, 5)
                .Select(person =>
                {
                    Trial[] trials =
                    [
                        .. Enumerable
                            .Range(1, 3)
                            .Select(n =>
                                Assert.Single(
                                    Measuring.Of(Read($"A0{person}-two-{n}.csv"), JumpTask.DropLanding).Require()
                                )
                            ),
                    ];
                    double mass =
                        trials.Average(t => t.Value(MeasureNames.BodyWeight)) / Gravity.MetresPerSecondSquared;
                    return (
                        mass,
                        (MeasuredLanding[])
                            [
                                .. trials.Select(t => new MeasuredLanding(
                                    t.Value(MeasureNames.DropHeight),
                                    t.Value(MeasureNames.PeakLandingForce)
                                )),
                            ]
                    );
                }),
        ];

    private static Recording Read(string name)
    {
        using var zip = new ZipArchive(new MemoryStream(Recorded.Bytes(Archive)));
        using Stream entry = zip.Entries.Single(e => e.Name == name).Open();
        using var copy = new MemoryStream();
        entry.CopyTo(copy);
        return Recording.From(copy.ToArray()).Require();
    }

    /// <summary>The model as it is used needs three landings; here two are left, and it is fitted by itself to see what it is worth.</summary>
    [Fact]
    public void EachLanding_FromTheSamePersonsOthers_IsOffByAFifth_AndItsDoubtSaysSo()
    {
        var misses = new List<double>();
        var plain = new List<double>();
        var covered = new List<bool>();
        foreach ((double mass, MeasuredLanding[] landings) in People())
        {
            double weight = mass * Gravity.MetresPerSecondSquared;
            for (int left = 0; left < landings.Length; left++)
            {
                ImmutableArray<MeasuredLanding> others = [.. landings.Where((_, i) => i != left)];
                var model = LandingForces.Fit(others, weight);
                double predicted = model.PeakBw(Jumpwright.Mechanics.Flight.TouchDownSpeedMS(landings[left].DropM));
                double seen = landings[left].PeakForceN / weight;
                misses.Add(Math.Log(predicted / seen));
                plain.Add(others.Average(o => Math.Log(o.PeakForceN / weight)) - Math.Log(seen));
                double u = LandingForces.Relative(
                    others,
                    LandingForces.Miss(others, model, weight),
                    landings[left].DropM
                );
                covered.Add(Math.Abs(misses[^1]) <= 2 * u);
                output.WriteLine(
                    FormattableString.Invariant(
                        $"fall {100 * landings[left].DropM:0.0} cm, seen {seen:0.00}, predicted {predicted:0.00} body weights, ± {100 * u:0} %"
                    )
                );
            }
        }

        double rms = Math.Sqrt(misses.Average(m => m * m));
        output.WriteLine(
            FormattableString.Invariant(
                $"off by {100 * rms:0.0} % (root mean square), worst {100 * misses.Max(Math.Abs):0} %, inside ± 2u {covered.Count(c => c)} of {covered.Count}"
            )
        );
        // Nearly all of it is how the same person lands from one trial to the next: their plain mean is no better.
        double byMean = Math.Sqrt(plain.Average(m => m * m));
        output.WriteLine(FormattableString.Invariant($"the mean of the others is off by {100 * byMean:0.0} %"));
        Assert.InRange(byMean, 0.21, 0.26);
        Assert.True(rms <= byMean, "the spring should not be worse than a plain mean");
        Assert.InRange(rms, 0.18, 0.27);
        Assert.InRange(covered.Count(c => c), 13, 15);
    }

    /// <summary>Who lands now stiff, now soft, is told so; who lands evenly is not.</summary>
    [Fact]
    public void UnevenLandings_AreNamed()
    {
        const double weight = 700;
        MeasuredLanding[] even =
        [
            new(0.2, 3.0 * weight),
            new(0.3, 3.6 * weight),
            new(0.3, 3.7 * weight),
            new(0.2, 2.9 * weight),
        ];
        MeasuredLanding[] uneven =
        [
            new(0.2, 2.0 * weight),
            new(0.3, 5.0 * weight),
            new(0.3, 2.5 * weight),
            new(0.2, 4.0 * weight),
        ];
        Assert.DoesNotContain(Warnings(even), w => w.Contains("now stiff, now soft", StringComparison.Ordinal));
        Assert.Contains(Warnings(uneven), w => w.Contains("now stiff, now soft", StringComparison.Ordinal));

        static IEnumerable<string> Warnings(MeasuredLanding[] landings) =>
            LandingForces
                .Of(new LandingInput(weight / Gravity.MetresPerSecondSquared, [.. landings], 0.3))
                .Require()
                .Warnings.Select(w => w.ToString());
    }

    /// <summary>Three from one box give a number up to a step above it, and say so where their falls are alike; beyond a step none.</summary>
    [Fact]
    public void Landings_FromOneBox_AreForetoldAStepHigher_AndNeverBeyond()
    {
        foreach ((double mass, MeasuredLanding[] landings) in People())
        {
            double highest = landings.Max(l => l.DropM);
            Assert.False(
                LandingForces.Of(new LandingInput(mass, [.. landings], highest + 0.11)).TryGet(out _, out Refusal? far)
            );
            Assert.Contains("more than 10 cm above", far!.Sentence, StringComparison.Ordinal);
            LandingForce near = LandingForces.Of(new LandingInput(mass, [.. landings], highest + 0.099)).Require();
            Assert.Equal(
                landings.Max(l => l.DropM) - landings.Min(l => l.DropM) < 0.05,
                near.Warnings.Any(w => w.ToString().Contains("from about one height", StringComparison.Ordinal))
            );
            output.WriteLine(near.Sentence);
        }
    }
}
