using System.Globalization;
using System.Text;
using Jumpwright.Storage.Folders;
using Jumpwright.Tests.Outside.Storage.Folders;

namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>A squad folder on disk with recordings that a plain generator wrote. Gone with the object.</summary>
internal sealed class SquadOnDisk : IDisposable
{
    public SquadOnDisk(int recordings, int samples = 200)
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
                $"{file},{athlete},2027-01-{1 + (i % 20):00},countermovement-jump,,,,both\n"
            );
            Write(file, Recording(i, samples));
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

    /// <summary>Not a jump; bytes that differ from recording to recording. Every seventh is bad on purpose.</summary>
    public static string Recording(int number, int samples)
    {
        if (number % 7 == 6)
        {
            return "time_s,force_N\n0,bad" + number.ToString(CultureInfo.InvariantCulture) + "\n";
        }

        var text = new StringBuilder("time_s,force_left_N,force_right_N\n");
        var random = new Random(number);
        for (int i = 0; i < samples; i++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{i / 1000.0:0.000},{350 + random.NextDouble():0.0},{350 + random.NextDouble():0.0}\n"
            );
        }

        return text.ToString();
    }
}
