using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Folders.Csv;
using Jumpwright.Storage.Stores.Rows;
using Microsoft.EntityFrameworkCore;

namespace Jumpwright.Storage.Stores;

/// <summary>Removes an athlete from the store. Their rows leave the kept tables too, so that an export does not bring them back.</summary>
internal static class Eraser
{
    public static Outcome<ErasureReport> Erase(StoreContext context, string athlete)
    {
        var theirs = context
            .Measurements.Where(m => m.AthleteId == athlete)
            .Select(m => new { m.Id, m.Sha256 })
            .ToList();
        string[] ids = theirs.Select(m => m.Id).ToArray();
        int rows =
            context.Athletes.Where(a => a.Id == athlete).ExecuteDelete()
            + context.Completed.Where(r => r.AthleteId == athlete).ExecuteDelete()
            + context.Screens.Where(r => r.AthleteId == athlete).ExecuteDelete()
            + context.Symptoms.Where(r => r.AthleteId == athlete).ExecuteDelete()
            + context.Restrictions.Where(r => r.AthleteId == athlete).ExecuteDelete()
            + context.Journal.Where(r => r.AthleteId == athlete).ExecuteDelete();
        context.Problems.Where(p => p.AthleteId == athlete).ExecuteDelete();
        int recordings = context
            .Recordings.Where(r => ids.Contains(r.MeasurementId!) || r.AthleteId == athlete)
            .ExecuteDelete();
        int measured = context.Measurements.Where(m => ids.Contains(m.Id)).ExecuteDelete();
        int plans = context.Plans.Where(p => p.Json.Contains("\"" + athlete + "\"")).ExecuteDelete();
        if (rows + recordings + measured + plans == 0)
        {
            return StoreRefusals.NoAthlete(athlete);
        }

        CutFromTables(context, athlete);
        context.SaveChanges();

        // Bytes that nobody else's measurement, recording or table holds go; what others share stays.
        context
            .Raw.Where(r =>
                !context.Measurements.Any(m => m.Sha256 == r.Sha256)
                && !context.Recordings.Any(x => x.Sha256 == r.Sha256)
                && !context.TableFiles.Any(f => f.Sha256 == r.Sha256)
            )
            .ExecuteDelete();
        foreach (BatchRow batch in context.Batches)
        {
            // The next import must not take the folder for known: it may bring the athlete back, or not.
            batch.Fingerprint = "erased";
        }

        int nobodys = context.Measurements.Count(m => m.Refusal != null && m.AthleteId == null);
        return new ErasureReport(athlete, rows, recordings, plans, nobodys);
    }

    private static void CutFromTables(StoreContext context, string athlete)
    {
        foreach (TableFileRow file in context.TableFiles.Where(f => f.Name.EndsWith(".csv")).ToArray())
        {
            RawRow raw = context.Raw.Single(r => r.Sha256 == file.Sha256);
            if (RawBytes.Unpack(raw) is not { } bytes)
            {
                continue;
            }

            byte[] cut = RowCutter.Without(bytes, file.Name == SquadTables.Athletes ? "id" : "athlete", athlete);
            if (cut.AsSpan().SequenceEqual(bytes))
            {
                continue;
            }

            string sha256 = MeasurementIds.Sha256(cut);
            if (!context.Raw.Any(r => r.Sha256 == sha256))
            {
                context.Raw.Add(RawBytes.Pack(cut, sha256));
            }

            file.Sha256 = sha256;
        }
    }
}
