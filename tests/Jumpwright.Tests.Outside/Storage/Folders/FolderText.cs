using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Tests.Outside.Storage.Folders;

/// <summary>A small squad folder in memory, of which a test replaces what it is about.</summary>
internal static class FolderText
{
    public const string SquadYaml = """
        name: Riverside Club
        time_zone: Europe/Paris
        kit:
          - {id: plyo-box, count: 3}
        windows:
          - {day: monday, start: "17:00", minutes: 45}
        practices:
          - {day: tuesday, start: "19:00", minutes: 90, sport: volleyball}
        fixtures:
          - {date: 2027-01-09, start: "15:00", name: Home match}
        policy:
          contacts_per_session: 100
        """;

    public const string AthletesHeader =
        "id,name,birth_date,sex,body_mass_kg,stature_m,sport,level,operation_date,operation_site,operation_side,note\n";

    public const string Athletes =
        AthletesHeader
        + "a01,Ada,2000-05-01,female,64.5,1.72,volleyball,advanced,,,,\n"
        + "a02,Ben,2008-02-29,male,71,1.80,volleyball,beginner,2026-09-01,knee,left,\"torn, mended\"\n";

    public const string SymptomsHeader = "athlete,date,site,side,tissue,named_by,kind,when,score_0_10,note\n";

    public const string RestrictionsHeader = "athlete,from,until,site,side,allowed,forbidden,limit,set_by,role,note\n";

    public const string ScreensHeader = "athlete,date,test,side,value,unit,trial,assessor,note\n";

    public const string CompletedHeader =
        "athlete,date,session,exercise,sets,reps,contacts,landing_faults,pain_during,pain_next_morning,effort_rpe,"
        + "drop_height_m,note\n";

    public const string TrialsHeader = "file,athlete,date,task,body_mass_kg,external_load_kg,drop_height_m,limb\n";

    /// <summary>Reads the small squad with these files in place of its own, or beside them.</summary>
    public static SquadFolder Read(params (string Name, string Text)[] files) =>
        Read(files.Select(f => (f.Name, Encoding.UTF8.GetBytes(f.Text))).ToArray());

    public static SquadFolder Read(params (string Name, byte[] Bytes)[] files)
    {
        var all = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal)
        {
            [SquadTables.Squad] = Encoding.UTF8.GetBytes(SquadYaml),
            [SquadTables.Athletes] = Encoding.UTF8.GetBytes(Athletes),
        };
        foreach ((string name, byte[] bytes) in files)
        {
            all[name] = bytes;
        }

        Outcome<SquadFolder> read = SquadFolder.Read("test", all);
        return read.Require();
    }

    /// <summary>The ids of athletes for whom a row that nobody can read closes everything.</summary>
    public static string[] Closed(this SquadFolder folder) =>
        folder
            .Restrictions.Where(r => r.Forbidden.Contains(Jumpwright.Storage.Folders.Tables.Unreadable.Word))
            .Select(r => r.AthleteId)
            .Distinct()
            .Order(StringComparer.Ordinal)
            .ToArray();
}
