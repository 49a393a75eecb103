using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Demo;
using Jumpwright.Storage.Stores;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Pages.Bench;

/// <summary>
/// A squad folder with its store at the size of a large club. One recording an athlete is a real file of 1000 Hz that the core
/// measures, so that its trace can be drawn; the others are short files whose trials follow the pattern of one measured trial
/// with each measure moved within its doubt, because what is timed is reading and showing, not measuring.
/// </summary>
internal static class LargeSquad
{
    public static readonly LocalDate Day = new(2027, 1, 4);

    private const int TrialsAFile = 5;
    private const string Mark = "# bench ";

    public static void Make(string folder, int athletes, int trials, TextWriter to)
    {
        Directory.CreateDirectory(Path.Combine(folder, "recordings"));
        File.WriteAllText(Path.Combine(folder, "squad.yaml"), Squad);
        var people = new StringBuilder(
            "id,name,birth_date,sex,body_mass_kg,stature_m,sport,level,operation_date,operation_site,operation_side\n"
        );
        var symptoms = new StringBuilder("athlete,date,site,side,tissue,named_by,kind,when,score_0_10,note\n");
        var table = new StringBuilder("file,athlete,date,task,body_mass_kg\n");
        var real = new StringBuilder(
            "file,athlete,date,task,device,rate_hz,body_mass_kg,height_m,depth_m,noise_N,sway_N,seed\n"
        );
        int filesEach = Math.Max(1, (trials - athletes) / TrialsAFile / athletes);
        for (int a = 0; a < athletes; a++)
        {
            string id = $"p{a + 1:000}";
            int mass = 55 + (a % 45);
            people.Append(
                Invariant(
                    $"{id},Athlete {a + 1},{1995 + (a % 12)}-03-14,{(a % 2 == 0 ? "female" : "male")},{mass},1.80,volleyball,intermediate,,,\n"
                )
            );
            symptoms.Append(Invariant($"{id},2027-01-02,knee,both,,,pain,after,0,\n"));
            real.Append(
                Invariant(
                    $"{id}-plate.csv,{id},2027-01-02,countermovement-jump,two-plates,1000,{mass},0.{30 + (a % 12)},0.3,1.5,3,{a + 1}\n"
                )
            );
            for (int f = 0; f < filesEach; f++)
            {
                string file = $"recordings/{id}-{f:000}.csv";
                LocalDate date = Day.PlusDays(-3 - (f * 2));
                table.Append(Invariant($"{file},{id},{date:uuuu-MM-dd},countermovement-jump,{mass}\n"));
                File.WriteAllText(Path.Combine(folder, file), $"{Mark}{id} {f}\n");
            }
        }

        File.WriteAllText(Path.Combine(folder, "athletes.csv"), people.ToString());
        File.WriteAllText(Path.Combine(folder, "symptoms.csv"), symptoms.ToString());
        byte[] pattern = [];
        foreach ((string path, byte[] bytes) in DemoRecordings.Write(real.ToString()))
        {
            if (path != "trials.csv")
            {
                File.WriteAllBytes(Path.Combine(folder, path), bytes);
                pattern = bytes;
                table.Append(Invariant($"{path},{Path.GetFileName(path)[..4]},2027-01-02,countermovement-jump,\n"));
            }
        }

        File.WriteAllText(Path.Combine(folder, "trials.csv"), table.ToString());
        Trial template = MeasuredRecording.ByCore(pattern, null).Trials.Require()[0];
        using Store store = Store.Open(Path.Combine(folder, "jumpwright.db"), TimeProvider.System).Require();
        ImportReport report = store.Import(folder, (bytes, labels) => Measure(bytes, labels, template)).Require();
        to.WriteLine(
            Invariant($"{athletes} athletes, {report.Measured} recordings measured, {report.Refused.Length} refused.")
        );
    }

    private static MeasuredRecording Measure(ReadOnlyMemory<byte> bytes, RecordingLabels? labels, Trial template)
    {
        if (!bytes.Span.StartsWith(Encoding.ASCII.GetBytes(Mark)))
        {
            return MeasuredRecording.ByCore(bytes, labels);
        }

        uint state = 2166136261;
        foreach (byte b in bytes.Span)
        {
            state = (state ^ b) * 16777619;
        }

        var random = new Random((int)state);
        ImmutableArray<Trial> trials =
        [
            .. Enumerable
                .Range(1, TrialsAFile)
                .Select(n =>
                    template with
                    {
                        Number = n,
                        Measures =
                        [
                            .. template.Measures.Select(m => new Measure(
                                m.Name,
                                m.Value + (2 * m.StandardUncertainty * ((2 * random.NextDouble()) - 1)),
                                m.Unit,
                                m.StandardUncertainty,
                                m.Method
                            )),
                        ],
                    }
                ),
        ];
        return new MeasuredRecording(labels ?? RecordingLabels.None, Device.TwoForcePlates, trials);
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private const string Squad = """
        name: Bench club
        time_zone: UTC
        kit:
          - {id: plyo-box, count: 30}
          - {id: drop-box, count: 20}
          - {id: seat, count: 20}
          - {id: bench, count: 20}
          - {id: band, count: 20}
        windows:
          - {day: monday, start: "17:00", minutes: 45, surface: sprung-floor}
          - {day: wednesday, start: "18:30", minutes: 45, surface: sprung-floor}

        """;
}
