using System.Globalization;
using System.Text;
using Jumpwright.Storage.Folders;
using Jumpwright.Tests.Outside.Storage.Folders;

namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>A squad folder on disk with recordings that a plain generator wrote. Gone with the object.</summary>
internal sealed class SquadOnDisk : IDisposable
{
    public SquadOnDisk(int recordings)
    {
        Write(SquadTables.Squad, FolderText.SquadYaml);
        Write(SquadTables.Athletes, FolderText.Athletes);
        Write(SquadTables.Symptoms, FolderText.SymptomsHeader + "a02,2027-01-02,knee,left,,,pain,during,3,\n");
        Write(
            SquadTables.Restrictions,
            FolderText.RestrictionsHeader
                + "a02,2026-12-01,2027-02-01,knee,left,snap-down,depth-jump,,Dr Roy,surgeon,\n"
        );
        Write(SquadTables.Screens, FolderText.ScreensHeader + "a01,2027-01-02,landing-screen,,1,faults,1,coach,\n");
        Write(
            SquadTables.Completed,
            FolderText.CompletedHeader + "a01,2026-12-30,s1,pogo-hops,3,10,30,0,0,0,5,0.2,\"fine, mostly\"\n"
        );
        var manifest = new StringBuilder(FolderText.TrialsHeader);
        for (int i = 0; i < recordings; i++)
        {
            string file = $"recordings/r{i:000}.csv";
            string athlete = i % 3 == 2 ? "a02" : "a01";
            manifest.Append(
                CultureInfo.InvariantCulture,
                $"{file},{athlete},2027-01-{1 + (i % 20):00},{(IsHops(i) ? "repeated-hops" : "countermovement-jump")},,,,both\n"
            );
            Write(file, Recording(i));
        }

        Write(SquadTables.Trials, manifest.ToString());
    }

    public string Path { get; } = Directory.CreateTempSubdirectory("jumpwright-").FullName;

    public void Write(string file, string text)
    {
        string path = System.IO.Path.Combine(Path, file);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    public string Read(string file) => File.ReadAllText(System.IO.Path.Combine(Path, file));

    public void Delete(string file) => File.Delete(System.IO.Path.Combine(Path, file));

    public void Dispose() => Directory.Delete(Path, recursive: true);

    /// <summary>
    /// Hops on a mat and jumps on two plates by turns, no two alike. Every seventh is bad on purpose. The jumps have the
    /// outline of one (quiet, down, up, flight with edges as a plate shows them, landing, quiet), no more: truth to the millimetre is the simulator's.
    /// </summary>
    public static string Recording(int number) =>
        number % 7 == 6 ? "time_s,force_N\n0,bad" + number.ToString(CultureInfo.InvariantCulture) + "\n"
        : IsHops(number) ? Hops(number)
        : Jump(number);

    private static bool IsHops(int number) => number % 2 == 0;

    private static string Hops(int number)
    {
        var random = new Random(number);
        var text = new StringBuilder("contact_s,flight_s\n");
        for (int i = 0; i < 10; i++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{0.18 + (0.02 * random.NextDouble()):0.000},{0.45 + (0.03 * random.NextDouble()):0.000}\n"
            );
        }

        return text.ToString();
    }

    private static string Jump(int number)
    {
        const double RateHz = 1000;
        const double Gravity = 9.81;
        const double PropulsionS = 0.5;
        const double LandingS = 0.4;
        var random = new Random(number);
        double massKg = 60 + (20 * random.NextDouble());
        double takeOffMS = 2.2 + (0.5 * random.NextDouble());
        (double DurationS, double ImpulsePerKg)[] parts =
        [
            (1.5, 0),
            (0.35, -1.1),
            (PropulsionS, 1.1 + takeOffMS),
            (2 * takeOffMS / Gravity, double.NaN),
            (LandingS, takeOffMS),
            (1.5, 0),
        ];
        var text = new StringBuilder("time_s,force_left_N,force_right_N\n");
        int sample = 0;
        foreach ((double durationS, double impulse) in parts)
        {
            int count = (int)Math.Round(durationS * RateHz);
            for (int i = 0; i < count; i++, sample++)
            {
                double acceleration = impulse * Math.PI / (2 * durationS) * Math.Sin(Math.PI * i / count);
                double force = double.IsNaN(impulse) ? 0 : massKg * (Gravity + acceleration);
                force *= durationS switch
                {
                    PropulsionS => Math.Min(1, (count - i) / 40.0),
                    LandingS => Math.Min(1, i / 20.0),
                    _ => 1,
                };
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"{sample / RateHz:0.000},{(force / 2) + random.NextDouble():0.0},{(force / 2) - random.NextDouble():0.0}\n"
                );
            }
        }

        return text.ToString();
    }
}
