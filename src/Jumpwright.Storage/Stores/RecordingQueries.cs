using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
using Jumpwright.Trials;
using Microsoft.EntityFrameworkCore;

namespace Jumpwright.Storage.Stores;

/// <summary>Reads recordings and all that was measured out of the store.</summary>
internal static class RecordingQueries
{
    public static ImmutableArray<StoredRecording> All(StoreContext context)
    {
        var measurements = context
            .Measurements.Select(m => new { Row = m, Trials = m.Trials.Count })
            .ToDictionary(m => m.Row.Id, StringComparer.Ordinal);
        return
        [
            .. context
                .Recordings.OrderBy(r => r.Position)
                .AsEnumerable()
                .Select(r =>
                {
                    var found = r.MeasurementId is null ? null : measurements[r.MeasurementId];
                    string? refusal = found?.Row.Refusal ?? r.Refusal;
                    RefusedFor? why = found?.Row.RefusedFor ?? r.RefusedFor;
                    return new StoredRecording(
                        r.File,
                        r.Sha256,
                        found is null ? new RecordingLabels(r.AthleteId) : TrialRows.Labels(found.Row),
                        found?.Row.Device,
                        found?.Trials ?? 0,
                        refusal is null ? null : new Refusal(refusal),
                        refusal is null ? null : why
                    );
                }),
        ];
    }

    /// <summary>Trials of some recordings, by file.</summary>
    public static ImmutableDictionary<string, ImmutableArray<Trial>> TrialsIn(
        StoreContext context,
        IReadOnlyCollection<string> files
    )
    {
        Dictionary<string, string> measured = context
            .Recordings.Where(r => files.Contains(r.File) && r.MeasurementId != null)
            .ToDictionary(r => r.File, r => r.MeasurementId!, StringComparer.Ordinal);
        string[] ids = [.. measured.Values.Distinct(StringComparer.Ordinal)];
        ILookup<string, Trial> trials = context
            .Trials.Where(t => ids.Contains(t.MeasurementId))
            .Include(t => t.Measures)
            .Include(t => t.Contacts)
            .Include(t => t.Remarks)
            .AsSplitQuery()
            .OrderBy(t => t.Number)
            .AsEnumerable()
            .ToLookup(t => t.MeasurementId, TrialRows.ToTrial, StringComparer.Ordinal);
        return measured.ToImmutableDictionary(
            m => m.Key,
            m => trials[m.Value].ToImmutableArray(),
            StringComparer.Ordinal
        );
    }

    /// <summary>
    /// The measurements that recordings point to, with all their rows, by id: one flat query a table, joined here, which for
    /// thousands of trials is several times faster than having the rows joined on the way.
    /// </summary>
    public static Dictionary<string, MeasurementRow> Measurements(StoreContext context)
    {
        IQueryable<MeasurementRow> wanted = context.Measurements.Where(m =>
            context.Recordings.Any(r => r.MeasurementId == m.Id)
        );
        IQueryable<string> ids = wanted.Select(m => m.Id);
        Dictionary<string, MeasurementRow> rows = wanted.ToDictionary(m => m.Id, StringComparer.Ordinal);
        var trials = new Dictionary<(string, int), TrialRow>();
        foreach (TrialRow trial in context.Trials.Where(t => ids.Contains(t.MeasurementId)))
        {
            rows[trial.MeasurementId].Trials.Add(trial);
            trials.Add((trial.MeasurementId, trial.Number), trial);
        }

        foreach (MeasureRow measure in context.Measures.Where(m => ids.Contains(m.MeasurementId)))
        {
            trials[(measure.MeasurementId, measure.TrialNumber)].Measures.Add(measure);
        }

        foreach (ContactRow contact in context.Contacts.Where(c => ids.Contains(c.MeasurementId)))
        {
            trials[(contact.MeasurementId, contact.TrialNumber)].Contacts.Add(contact);
        }

        foreach (RemarkRow remark in context.Remarks.Where(r => ids.Contains(r.MeasurementId)))
        {
            trials[(remark.MeasurementId, remark.TrialNumber)].Remarks.Add(remark);
        }

        return rows;
    }
}
