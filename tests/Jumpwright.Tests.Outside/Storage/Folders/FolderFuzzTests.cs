using System.Text;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Tests.Outside.Storage.Folders;

/// <summary>Files as people and programs break them. The seeds are fixed.</summary>
public class FolderFuzzTests
{
    private const string Symptoms =
        FolderText.SymptomsHeader
        + "a01,2027-01-02,knee,left,,,swelling,rest,,\"after \"\"five-a-side\"\"\"\n"
        + "a02,2027-01-03,shin,right,bone,Dr Roy,pain,night,4,\n";

    private const string Restrictions =
        FolderText.RestrictionsHeader
        + "a01,2026-12-01,2027-02-01,knee,left,snap-down;pogo-hops,depth-jump,drops ≤ 0.20 m,Dr Roy,surgeon,\n"
        + "a02,2026-12-01,,shin,right,,jumps,,Dr Roy,surgeon,\"rest, then ask\"\n";

    private static readonly byte[] Bites = [.. ",;\"\n\r\t 0a-:[]{}#&*!|>%@`'"u8, 0, 0xFF, 0xEF, 0xBB, 0xC3, 0x80];

    [Fact]
    public void Folder_WithAnyFileBroken_IsReadToTheEnd()
    {
        var random = new Random(1);
        (string Name, string Text)[] files =
        [
            (SquadTables.Squad, FolderText.SquadYaml),
            (SquadTables.Athletes, FolderText.Athletes),
            (SquadTables.Symptoms, Symptoms),
            (SquadTables.Restrictions, Restrictions),
            (SquadTables.Screens, FolderText.ScreensHeader + "a01,2027-01-02,landing-screen,,1,faults,1,coach,\n"),
            (SquadTables.Completed, FolderText.CompletedHeader + "a01,2026-12-30,s1,pogo-hops,3,10,30,0,0,0,5,,\n"),
            (SquadTables.Trials, FolderText.TrialsHeader + "recordings/a.csv,a01,2027-01-02,squat-jump,,,,both\n"),
            (
                SquadTables.Fixtures,
                "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nUID:1\r\nDTSTART;TZID=Europe/Paris:20270320T150000\r\n"
                    + "RRULE:FREQ=WEEKLY;COUNT=3\r\nSUMMARY:League\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
            ),
        ];

        for (int i = 0; i < 1500; i++)
        {
            (string name, string text) = files[i % files.Length];
            SquadFolder folder = FolderText.Read((name, Broken(Encoding.UTF8.GetBytes(text), random)));

            Assert.All(folder.Problems, p => Assert.False(string.IsNullOrWhiteSpace(p.Sentence)));
        }
    }

    [Theory]
    [InlineData(SquadTables.Symptoms)]
    [InlineData(SquadTables.Restrictions)]
    public void SafetyRow_HoweverItIsBroken_StaysOrCloses(string file)
    {
        string text = file == SquadTables.Symptoms ? Symptoms : Restrictions;
        int headerEnds = text.IndexOf('\n') + 1;
        int rowEnds = text.IndexOf('\n', headerEnds);
        int idEnds = text.IndexOf(',', headerEnds) + 1;
        var random = new Random(2);
        int broken = 0;

        for (int i = 0; i < 3000; i++)
        {
            // One to three bites anywhere in the first row behind the athlete's id.
            byte[] row = Broken(Encoding.UTF8.GetBytes(text[idEnds..rowEnds]), random);
            byte[] bytes =
            [
                .. Encoding.UTF8.GetBytes(text[..idEnds]),
                .. row,
                .. Encoding.UTF8.GetBytes(text[rowEnds..]),
            ];
            SquadFolder folder = FolderText.Read((file, bytes));

            string[] spoken =
            [
                .. folder.Symptoms.Select(s => s.AthleteId),
                .. folder.Restrictions.Select(r => r.AthleteId),
            ];
            bool stops = folder.StopsPlanning.Any();
            Assert.True(stops || spoken.Contains("a01"), $"{file}: a01's row vanished: {Encoding.UTF8.GetString(row)}");
            Assert.True(stops || spoken.Contains("a02"), $"{file}: a02's row vanished: {Encoding.UTF8.GetString(row)}");
            broken += folder.Problems.Any() ? 1 : 0;
        }

        Assert.True(broken > 1000, $"Only {broken} of 3000 rows were broken so that it showed.");
    }

    [Theory]
    [InlineData(1_000_000)]
    [InlineData(10_000_000)]
    [InlineData(30_000_000)]
    public void Note_OfMillionsOfCharacters_CostsNoOtherRow(int length)
    {
        string note = new('x', length);

        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Symptoms,
                FolderText.SymptomsHeader
                    + $"a01,2027-01-02,knee,left,,,swelling,rest,,{note}\n"
                    + "a02,2027-01-03,shin,right,,,pain,night,4,\n"
            )
        );

        Assert.Contains(folder.Symptoms, s => s.AthleteId == "a02");
        Assert.True(folder.Symptoms.Any(s => s.AthleteId == "a01") || folder.Closed().Contains("a01"));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("=HYPERLINK(1)")]
    [InlineData("\u202Etxt.exe")]
    [InlineData("O'Brien; DROP TABLE raw;--")]
    public void Name_WhateverItIs_IsKeptAsText(string name)
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Athletes, FolderText.AthletesHeader + $"a01,{name},2000-05-01,,64,,,,,,,\n")
        );

        Assert.Equal(name, Assert.Single(folder.Athletes).Name);
        Assert.Empty(folder.Problems);
    }

    private static byte[] Broken(byte[] bytes, Random random)
    {
        var list = bytes.ToList();
        for (int bites = random.Next(1, 4); bites > 0 && list.Count > 1; bites--)
        {
            int at = random.Next(list.Count);
            switch (random.Next(4))
            {
                case 0:
                    list.RemoveAt(at);
                    break;
                case 1:
                    list.Insert(at, Bites[random.Next(Bites.Length)]);
                    break;
                case 2:
                    list[at] = Bites[random.Next(Bites.Length)];
                    break;
                default:
                    list.RemoveRange(at, random.Next(Math.Min(20, list.Count - at)));
                    break;
            }
        }

        return [.. list];
    }
}
