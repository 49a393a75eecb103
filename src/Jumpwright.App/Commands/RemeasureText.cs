using System.Globalization;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Commands;

/// <summary>A comparison of what is stored with what would be, as plain text.</summary>
internal static class RemeasureText
{
    public static void Write(RemeasureReport report, bool list, TextWriter to)
    {
        to.WriteLine(
            $"Stored by version {string.Join(", ", report.StoredVersions)}, measured again by {report.Version}: "
                + $"{report.Unchanged} of {report.Recordings} recordings come out the same."
        );
        if (report.Changes.IsEmpty)
        {
            return;
        }

        Measures(report, to);
        Listed(report, RemeasureKind.NewlyRefused, "newly refused", to);
        Listed(report, RemeasureKind.NewlyMeasured, "newly measured", to);
        Listed(report, RemeasureKind.Trials, "with another number of trials", to);
        int doubts = report.Changes.Count(c => c.Kind == RemeasureKind.Doubtful);
        int others = report.Changes.Count(c => c.Kind is RemeasureKind.Other or RemeasureKind.OtherRefusal);
        to.WriteLine();
        to.WriteLine($"Named doubtful, or no more: {doubts}. Other events, warnings or words of a refusal: {others}.");
        if (list)
        {
            to.WriteLine();
            to.WriteLine("Every change:");
            foreach (RemeasureChange change in report.Changes)
            {
                to.WriteLine("  " + change.Sentence);
            }
        }

        to.WriteLine();
        to.WriteLine(
            report.Applied
                ? "It took effect; what older versions measured is kept."
                : "Nothing was written. To let it take effect, add --apply."
        );
    }

    private static void Measures(RemeasureReport report, TextWriter to)
    {
        RemeasuredMeasure[] moved = [.. report.Measures.Where(m => m.Changed + m.Lost + m.Gained > 0)];
        if (moved.Length == 0)
        {
            return;
        }

        to.WriteLine();
        to.WriteLine($"{"measure", -36} {"changed", 11} {"median", 10} {"largest", 10} {"doubt", 18}");
        foreach (RemeasuredMeasure m in moved)
        {
            to.WriteLine(
                $"{m.Name, -36} {$"{m.Changed} of {m.Compared}", 11} {Signed(m.MedianChange), 10} {Signed(m.WorstChange), 10} "
                    + $"{$"{Short(m.MedianDoubt)} to {Short(m.MedianDoubtAfter)}", 18} {m.Unit}"
            );
            if (m.WorstWhere is not null)
            {
                string doubts = m.MedianDoubt > 0 ? $", {Short(Math.Abs(m.WorstChange) / m.MedianDoubt)} doubts" : "";
                to.WriteLine($"  largest in {m.WorstWhere}{doubts}");
            }

            if (m.Lost + m.Gained > 0)
            {
                to.WriteLine($"  no more given by {m.Lost} trials, newly given by {m.Gained}");
            }
        }
    }

    private static void Listed(RemeasureReport report, RemeasureKind kind, string words, TextWriter to)
    {
        RemeasureChange[] found = [.. report.Changes.Where(c => c.Kind == kind)];
        if (found.Length == 0)
        {
            return;
        }

        to.WriteLine();
        to.WriteLine($"{found.Length} recordings {words}:");
        foreach (RemeasureChange change in found)
        {
            to.WriteLine("  " + change.Sentence);
        }
    }

    private static string Signed(double value) =>
        value == 0 ? "0" : (value > 0 ? "+" : "") + value.ToString("G3", CultureInfo.InvariantCulture);

    private static string Short(double value) => value.ToString("G2", CultureInfo.InvariantCulture);
}
