using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Recordings.C3d;
using Jumpwright.Tests.Trials;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Recordings.C3d;

/// <summary>
/// The format's own sample files (Data/c3d/README.md). Smallest, largest and mean upward force are those of an independent small
/// reader, to its printed digit, before any baseline is taken off.
/// </summary>
public class C3dSampleFilesTests
{
    [Theory]
    [InlineData("s02-pc_int", 1, -20.1, 815.4, 175.86)]
    [InlineData("s02-pc_int", 2, -18.3, 830.1, 170.66)]
    [InlineData("s10-type-2", 1, -1.5, 397.9, 57.75)]
    [InlineData("s10-type-4", 1, -1.5, 390.5, 57.05)]
    [InlineData("s10-type-3", 1, 0, 726.6, 74.8)]
    [InlineData("s10-type-3", 2, -82.5, 577.8, -41.92)]
    [InlineData("s10-type-3", 3, -212.4, 515.3, -159.78)]
    [InlineData("s10-type-3", 4, -182.2, 607.0, -118.85)]
    [InlineData("s28-type1", 1, 0, 731.3, 89.2)]
    [InlineData("s00-walk1", 1, -3.9, 955.6, 199.26)]
    [InlineData("s00-walk1", 2, 2.6, 1012.2, 216.98)]
    [InlineData("s00-walk-type-3", 1, -2.0, 656.5, 106.13)]
    public void Force_AgreesWithASecondReader(string name, int plate, double least, double most, double mean)
    {
        double[] force = Force(Recorded.Bytes($"c3d/{name}.c3d"), plate);
        Assert.Equal(least, force.Min(), 0.051);
        Assert.Equal(most, force.Max(), 0.051);
        Assert.Equal(mean, force.Average(), 0.0051);
    }

    [Fact]
    public void OneRecording_InSixFormats_GivesOneAnswer()
    {
        ForceRecording[] six =
        [
            .. new[] { "pc_int", "pc_real", "dec_int", "dec_real", "sgi_int", "sgi_real" }.Select(f =>
                (ForceRecording)Recording.From(Recorded.Bytes($"c3d/s02-{f}.c3d")).Require()
            ),
        ];
        Assert.All(six, r => Assert.Equal(six[0].LeftN.ToArray(), r.LeftN.ToArray()));
        Assert.All(six, r => Assert.Equal(six[0].RightN.ToArray(), r.RightN.ToArray()));
        Assert.All(six, r => Assert.Equal(200, r.RateHz, 9));
        Assert.Single(
            six.Select(r =>
                    Measuring.Of(r, JumpTask.DropLanding).TryGet(out _, out Refusal? refusal) ? "" : refusal.Sentence
                )
                .Distinct()
        );
    }

    [Fact]
    public void MatrixAndPlainScale_OfOneRecording_AgreeWithinCrosstalk()
    {
        double[] plain = Force(Recorded.Bytes("c3d/s10-type-2.c3d"), 1);
        double[] matrix = Force(Recorded.Bytes("c3d/s10-type-4.c3d"), 1);
        Assert.All(plain.Zip(matrix), pair => Assert.Equal(pair.First, pair.Second, 12.0));
    }

    public static TheoryData<string, string> WalksAndTasks
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (string walk in new[] { "s00-walk1", "s00-walk-type-3", "s02-pc_int", "s10-type-2", "s10-type-4" })
            {
                foreach (string task in JumpTasks.All)
                {
                    all.Add(walk, task);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(WalksAndTasks))]
    public void Walk_IsNeverAJump(string walk, string task)
    {
        Recording read = Recording.From(Recorded.Bytes($"c3d/{walk}.c3d")).Require();
        if (Measuring.Of(read, JumpTasks.Parse(task)).TryGet(out ImmutableArray<Trial> trials, out _))
        {
            // A heel that strikes an empty plate may be read as a landing; it is never given a jump's measures.
            Assert.Equal("drop-landing", task);
            Assert.All(
                trials.SelectMany(t => t.Measures),
                m => Assert.DoesNotContain("jump", m.Name, StringComparison.Ordinal)
            );
        }
    }

    [Theory]
    [InlineData("s10-type-3", "60 analog samples")]
    [InlineData("s28-type1", "100 analog samples")]
    public void TooFewSamplesASecond_AreRefused(string name, string part)
    {
        Assert.False(Recording.From(Recorded.Bytes($"c3d/{name}.c3d")).TryGet(out _, out Refusal? refusal));
        Assert.Contains(part, refusal.Sentence, StringComparison.Ordinal);
    }

    private static double[] Force(byte[] bytes, int plate)
    {
        int at = (bytes[0] - 1) * 512;
        var file = new C3dBytes(bytes, (C3dByteOrder)bytes[at + 3]);
        C3dParameters parameters = C3dParameters.Read(file, at + 4).Require();
        C3dLayout layout = C3dLayout.Of(file, parameters).Require();
        return C3dReader.Force(file, layout, C3dPlate.Read(file, parameters, layout, plate).Require()).Require();
    }
}
