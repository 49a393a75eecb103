using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
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
