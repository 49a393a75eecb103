using System.Collections.Immutable;
using Jumpwright.App.Intake;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.App.Commands;

/// <summary>Measures as plain text: a heading a trial, a line a measure, then what to watch out for.</summary>
internal static class MeasureText
{
    public static void Write(MeasuredFile file, TextWriter to)
    {
        if (!file.Measured.Trials.TryGet(out ImmutableArray<Trial> trials, out Refusal? refusal))
        {
            to.WriteLine($"{file.Listed.File}: refused");
            to.WriteLine("  " + refusal.Sentence);
            to.WriteLine();
            return;
        }

        foreach (Trial trial in trials)
        {
            string number = trials.Length > 1 ? $", trial {trial.Number}" : "";
            to.WriteLine($"{file.Listed.File}: {Words.Of(trial.Task)}{number}");
            foreach (Measure measure in trial.Measures)
            {
                string doubtful = trial.Doubtful.Contains(measure.Name, StringComparer.Ordinal)
                    ? "; doubtful, do not decide from it"
                    : "";
                to.WriteLine(
                    $"  {MeasureWords.Name(measure.Name), -33}{MeasureWords.Value(measure), 24}  "
                        + $"{MeasureWords.Method(measure)}{doubtful}"
                );
            }

            foreach (string warning in trial.Warnings)
            {
                to.WriteLine("  note: " + warning);
            }

            to.WriteLine();
        }
    }
}
