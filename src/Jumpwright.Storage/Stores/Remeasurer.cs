using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores.Rows;
using Jumpwright.Trials;

namespace Jumpwright.Storage.Stores;

/// <summary>Compares what is stored of a recording with what measuring it again gives.</summary>
internal static class Remeasurer
{
    /// <summary>What differs; empty when the two are the same to the last digit.</summary>
    public static ImmutableArray<RemeasureChange> Compare(string file, MeasurementRow stored, MeasuredRecording again)
    {
        RemeasureChange Whole(string sentence) => new(file, stored.AthleteId, null, null, null, $"{file}: {sentence}");

        bool measured = again.Trials.TryGet(out ImmutableArray<Trial> trials, out Refusal? refusal);
        if (stored.Refusal is { } before)
        {
            return measured ? [Whole($"was refused ({before}) and would be measured.")]
                : refusal!.Sentence == before ? []
                : [Whole($"would be refused in other words: {refusal.Sentence}")];
        }

        if (!measured)
        {
            return [Whole($"was measured and would be refused: {refusal!.Sentence}")];
        }

        Trial[] old = [.. stored.Trials.OrderBy(t => t.Number).Select(TrialRows.ToTrial)];
        if (old.Length != trials.Length)
        {
            return [Whole($"held {old.Length} trials and would hold {trials.Length}.")];
        }

        return [.. old.Zip(trials).SelectMany(pair => Compare(file, stored.AthleteId, pair.First, pair.Second))];
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
                yield return new RemeasureChange(file, athlete, before.Number, old, now, sentence);
            }
        }

        foreach (string name in before.Doubtful.Except(after.Doubtful, StringComparer.Ordinal))
        {
            yield return Other($"{name} would be doubtful no more.");
        }

        foreach (string name in after.Doubtful.Except(before.Doubtful, StringComparer.Ordinal))
        {
            yield return Other($"{name} would be doubtful.");
        }

        if (
            before.Task != after.Task
            || before.Events != after.Events
            || !before.Contacts.SequenceEqual(after.Contacts)
        )
        {
            yield return Other("its events would be others.");
        }

        if (!before.Warnings.SequenceEqual(after.Warnings, StringComparer.Ordinal))
        {
            yield return Other("its warnings would be others.");
        }

        RemeasureChange Other(string what) => new(file, athlete, before.Number, null, null, $"{where}: {what}");
    }

    private static string Text(Measure? measure) =>
        measure is null
            ? "(none)"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{measure.Value:G6} ± {measure.StandardUncertainty:G2} {measure.Unit}"
            );
}
