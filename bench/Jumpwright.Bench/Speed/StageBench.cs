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
        PlateLevels[] levels = [.. read.Select(r => PlateLevels.Of(r.TotalN.Span, r.RateHz))];
        List<QuietStanding>[] still = [.. plates.Select(p => p.Still(0, p.Contacts.Count - 1))];
        EachFile[] stages =
        [
            new("the plainest parse", files, i => PlainParse.Sum(corpus[i])),
            new("Recording.From", files, i => Recording.From(corpus[i])),
            new("Measuring.Of, all of it", files, i => Measuring.Of(read[i])),
            new("  Plate.Of", files, i => Plate.Of(read[i]).Dispose()),
            new("    PlateLevels.Of", files, i => PlateLevels.Of(read[i].TotalN.Span, read[i].RateHz)),
            new(
                "    contacts, first look",
                files,
                i => FlightDetection.Contacts(read[i].TotalN.Span, read[i].RateHz, levels[i])
            ),
            new(
                "    contacts, edges fitted",
                files,
                i =>
                    FlightDetection.Contacts(
                        read[i].TotalN.Span,
                        read[i].RateHz,
                        plates[i].Levels,
                        plates[i].Empty.NoiseN
                    )
            ),
            new(
                "    EmptyPlate.Of",
                files,
                i => EmptyPlate.Of(read[i].TotalN.Span, read[i].RateHz, plates[i].Contacts, levels[i])
            ),
            new("  PlateDefects.Find", files, i => PlateDefects.Find(plates[i])),
            new("  Plate.Still", files, i => plates[i].Still(0, plates[i].Contacts.Count - 1)),
            new(
                "  Plate.FitMotion",
                files,
                i => plates[i].FitMotion(0, plates[i].Contacts.Count - 1, still[i], samePosture: true).Dispose()
            ),
        ];
        EachFile.Interleave(stages, rounds);
        to.WriteLine(
            $"One two-plate countermovement jump, 8 s at 1000 Hz; mean of {files} files, each with its fastest of {rounds} runs, one core. "
                + "What Measuring.Of takes beyond the stages below it is making the measures."
        );
        to.WriteLine($"{"stage", -28} {"us", 8} {"middle", 8} {"slowest", 8} {"alloc bytes", 12}");
        foreach (EachFile stage in stages)
        {
            (double middle, double slowest) = stage.SpreadMicroseconds;
            to.WriteLine(
                $"{stage.Name, -28} {stage.MicrosecondsAFile, 8:0.0} {middle, 8:0.0} {slowest, 8:0.0} {stage.AllocatedAFile, 12}"
            );
        }
    }
}
