using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Bench.Speed;

/// <summary>Where the time of one recording goes, stage by stage; each stage is given what the one before it made.</summary>
internal static class StageBench
{
    public static void Run(int files, int rounds, TextWriter to)
    {
        byte[][] corpus = Corpus.CountermovementJumps(files);
        ForceRecording[] read = [.. corpus.Select(f => (ForceRecording)Recording.From(f).Require())];
        Plate[] plates = [.. read.Select(Plate.Of)];
        List<QuietStanding>[] still = [.. plates.Select(p => p.Still(0, p.Contacts.Count - 1))];
        Timing[] stages =
        [
            new("Recording.From", () => Array.ForEach(corpus, f => Recording.From(f))),
            new("Measuring.Of, all of it", () => Array.ForEach(read, r => Measuring.Of(r))),
            new("  Plate.Of", () => Array.ForEach(read, r => Plate.Of(r))),
            new("  PlateDefects.Find", () => Array.ForEach(plates, p => PlateDefects.Find(p))),
            new("  Plate.Still", () => Array.ForEach(plates, p => p.Still(0, p.Contacts.Count - 1))),
            new(
                "  Plate.FitMotion",
                () =>
                {
                    for (int i = 0; i < plates.Length; i++)
                    {
                        plates[i].FitMotion(0, plates[i].Contacts.Count - 1, still[i], samePosture: true)?.Dispose();
                    }
                }
            ),
        ];
        Timing.Interleave(stages, rounds);
        to.WriteLine(
            $"One two-plate countermovement jump, 8 s at 1000 Hz; mean of {files}, fastest of {rounds} interleaved rounds, one core. "
                + "What Measuring.Of takes beyond the stages below it is making the measures."
        );
        to.WriteLine($"{"stage", -26} {"us", 8} {"alloc bytes", 12}");
        foreach (Timing stage in stages)
        {
            to.WriteLine($"{stage.Name, -26} {1e6 * stage.BestS / files, 8:0.0} {stage.AllocatedBytes / files, 12}");
        }
    }
}
