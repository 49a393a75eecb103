using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
using Microsoft.EntityFrameworkCore;

namespace Jumpwright.Storage.Stores;

/// <summary>Reads recordings and trials out of the store.</summary>
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
                    return new StoredRecording(
                        r.File,
                        r.Sha256,
                        found is null ? new RecordingLabels(r.AthleteId) : TrialRows.Labels(found.Row),
                        found?.Row.Device,
                        found?.Trials ?? 0,
                        refusal is null ? null : new Refusal(refusal)
                    );
                }),
        ];
    }

    /// <summary>
    /// Trials by day, then in the folder's order. One content counts once, however many files hold it; a trial without an
    /// athlete of the squad or without a day counts nowhere, which is said.
    /// </summary>
    public static (ImmutableArray<MeasuredTrial> Trials, ImmutableArray<FolderProblem> Strays) Trials(
        StoreContext context,
        string? athleteId = null
    )
    {
        HashSet<string> squad = context.Athletes.Select(a => a.Id).ToHashSet(StringComparer.Ordinal);
        Dictionary<string, MeasurementRow> measurements = Measurements(context, athleteId);
        var trials = new List<MeasuredTrial>();
        var strays = new List<FolderProblem>();
        var firstFile = new Dictionary<(string Sha256, string Athlete), string>();
        foreach (RecordingRow recording in context.Recordings.OrderBy(r => r.Position))
        {
            if (
                recording.MeasurementId is null
                || !measurements.TryGetValue(recording.MeasurementId, out MeasurementRow? row)
                || row.Refusal is not null
            )
            {
                continue;
            }

            if (Objection(row, squad) is { } objection)
            {
                strays.Add(Stray(recording.File, objection, row.AthleteId));
            }
            else if (!firstFile.TryAdd((row.Sha256, row.AthleteId!), recording.File))
            {
                string first = firstFile[(row.Sha256, row.AthleteId!)];
                strays.Add(Stray(recording.File, $"holds the same bytes as {first}; it counts once", row.AthleteId));
            }
            else
            {
                trials.AddRange(
                    row.Trials.OrderBy(t => t.Number).Select(t => TrialRows.ToTrial(recording.File, row, t))
                );
            }
        }

        return ([.. trials.OrderBy(t => t.Date)], [.. strays]);
    }

    /// <summary>
    /// The measurements that recordings point to, with all their rows, by id: one flat query a table, joined here, which for
    /// thousands of trials is several times faster than having the rows joined on the way.
    /// </summary>
    public static Dictionary<string, MeasurementRow> Measurements(StoreContext context, string? athleteId = null)
    {
        IQueryable<MeasurementRow> wanted = context.Measurements.Where(m =>
            context.Recordings.Any(r => r.MeasurementId == m.Id) && (athleteId == null || m.AthleteId == athleteId)
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

    private static string? Objection(MeasurementRow row, HashSet<string> squad) =>
        row.AthleteId is null ? "was measured but names no athlete: give it a row in trials.csv"
        : !squad.Contains(row.AthleteId)
            ? $"was measured but its athlete '{row.AthleteId}' is nobody's id in athletes.csv: correct the id in trials.csv"
        : row.Date is null ? "was measured but has no date: write it in trials.csv"
        : null;

    private static FolderProblem Stray(string file, string what, string? athlete) =>
        new(file, null, ProblemWeight.LeftOut, $"{file}: {what}.", athlete);
}
