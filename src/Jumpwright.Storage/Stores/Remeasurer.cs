using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores.Rows;
using Jumpwright.Trials;
using Microsoft.EntityFrameworkCore;

namespace Jumpwright.Storage.Stores;

/// <summary>Compares what is stored of a recording with what measuring it again gives.</summary>
internal static class Remeasurer
{
    /// <summary>What differs; empty when the two are the same to the last digit.</summary>
    /// <param name="file">The recording.</param>
    /// <param name="stored">As it is kept.</param>
    /// <param name="again">As it is measured now.</param>
    /// <param name="tally">Takes the pairs of measures.</param>
    public static ImmutableArray<RemeasureChange> Compare(
        string file,
        MeasurementRow stored,
        MeasuredRecording again,
        RemeasureTally tally
    )
    {
        RemeasureChange Whole(RemeasureKind kind, string sentence) =>
            new(file, stored.AthleteId, null, null, null, kind, $"{file}: {sentence}");

        bool measured = again.Trials.TryGet(out ImmutableArray<Trial> trials, out Refusal? refusal);
        if (stored.Refusal is { } said)
        {
            return measured ? [Whole(RemeasureKind.NewlyMeasured, $"was refused ({said}) and would be measured.")]
                : refusal!.Sentence == said ? []
                : [Whole(RemeasureKind.OtherRefusal, $"would be refused in other words: {refusal.Sentence}")];
        }

        if (!measured)
        {
            return [Whole(RemeasureKind.NewlyRefused, $"was measured and would be refused: {refusal!.Sentence}")];
        }

        Trial[] old = [.. stored.Trials.OrderBy(t => t.Number).Select(TrialRows.ToTrial)];
        if (old.Length != trials.Length)
        {
            return [Whole(RemeasureKind.Trials, $"held {old.Length} trials and would hold {trials.Length}.")];
        }

        foreach ((Trial before, Trial after) in old.Zip(trials))
        {
            tally.Add($"{file} trial {before.Number}", before, after);
        }

        return [.. old.Zip(trials).SelectMany(pair => Compare(file, stored.AthleteId, pair.First, pair.Second))];
    }

    /// <summary>Puts what was measured now in the place of what counted so far, for every recording that pointed to it.</summary>
    public static int Replace(StoreContext context, string file, MeasurementRow stored, MeasuredRecording now)
    {
        string id = MeasurementIds.Of(stored.Sha256, ProductVersion.Current, stored.Manifest);
        if (context.Recordings.Find(file)?.MeasurementId != stored.Id)
        {
            // Another file with the same content and labels was first, and took this one with it.
            return 0;
        }

        RecordingRow[] recordings = [.. context.Recordings.Where(r => r.MeasurementId == stored.Id)];
        if (id == stored.Id)
        {
            Array.ForEach(recordings, r => r.MeasurementId = null);
            context.SaveChanges();
            context.Measurements.Where(m => m.Id == id).ExecuteDelete();
        }

        if (!context.Measurements.Any(m => m.Id == id))
        {
            context.Measurements.Add(TrialRows.ToRow(id, stored.Sha256, ProductVersion.Current, stored.Manifest, now));
            context.SaveChanges();
        }

        Array.ForEach(recordings, r => r.MeasurementId = id);
        return recordings.Length;
    }

    private static IEnumerable<RemeasureChange> Compare(string file, string? athlete, Trial before, Trial after)
    {
        string where = $"{file} trial {before.Number}";
        foreach (
            string name in before.Measures.Concat(after.Measures).Select(m => m.Name).Distinct(StringComparer.Ordinal)
        )
        {
            Measure? old = before.Find(name);
            Measure? now = after.Find(name);
            if (old != now)
            {
                string sentence = $"{where}: {name} {Text(old)} would be {Text(now)}.";
                yield return new RemeasureChange(
                    file,
                    athlete,
                    before.Number,
                    old,
                    now,
                    RemeasureKind.Measure,
                    sentence
                );
            }
        }

        foreach (string name in before.Doubtful.Except(after.Doubtful, StringComparer.Ordinal))
        {
            yield return Other(RemeasureKind.Doubtful, $"{name} would be doubtful no more.");
        }

        foreach (string name in after.Doubtful.Except(before.Doubtful, StringComparer.Ordinal))
        {
            yield return Other(RemeasureKind.Doubtful, $"{name} would be doubtful.");
        }

        if (
            before.Task != after.Task
            || before.Events != after.Events
            || !before.Contacts.SequenceEqual(after.Contacts)
        )
        {
            yield return Other(RemeasureKind.Other, "its events would be others.");
        }

        if (!before.Warnings.SequenceEqual(after.Warnings, StringComparer.Ordinal))
        {
            yield return Other(RemeasureKind.Other, "its warnings would be others.");
        }

        RemeasureChange Other(RemeasureKind kind, string what) =>
            new(file, athlete, before.Number, null, null, kind, $"{where}: {what}");
    }

    private static string Text(Measure? measure) =>
        measure is null
            ? "(none)"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{measure.Value:G6} ± {measure.StandardUncertainty:G2} {measure.Unit}"
            );
}
