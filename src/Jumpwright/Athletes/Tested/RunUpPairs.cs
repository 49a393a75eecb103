using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Tested;

/// <summary>
/// Which run-up speed belongs to which recorded approach jump. A word of a person comes first: the recording's name in the note of
/// the speed, or "trial 3" in the recording's own note. Without any, order stands for it, only where there are as many speeds as
/// jumps, and that is said. Where neither holds nothing is paired, and the sentence says why.
/// </summary>
internal static partial class RunUpPairs
{
    /// <summary>Pairs, and what there is to say about them.</summary>
    /// <param name="trials">Approach jumps of one day off the same feet.</param>
    /// <param name="speeds">Speeds of that day and those feet.</param>
    /// <param name="remarks">Takes the sentences.</param>
    internal static ImmutableArray<(MeasuredTrial Trial, ScreenResult Speed)> Of(
        MeasuredTrial[] trials,
        ScreenResult[] speeds,
        ICollection<Sentence> remarks
    )
    {
        if (trials.Length == 0 || speeds.Length == 0)
        {
            return [];
        }

        Sentence when = $"Approach jumps of {trials[0].Date:uuuu-MM-dd}, {FeetOf(speeds[0].Side)}";
        MeasuredTrial[] ordered = [.. trials.OrderBy(t => t.File, StringComparer.Ordinal).ThenBy(t => t.Trial.Number)];
        if (speeds.GroupBy(s => s.TrialNumber).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            remarks.Add(
                $"{when}: trial {twice.Key} has two speeds, so none of that day is used. Give each run-up-speed its own trial number."
            );
            return [];
        }

        (MeasuredTrial? Trial, ScreenResult Speed, Sentence? Fault)[] stated =
        [
            .. speeds
                .Select(s => (Trial: Stated(ordered, s, out Sentence? fault), s, fault))
                .Where(p => p.Trial is not null || p.fault is not null),
        ];
        if (stated.Length == 0)
        {
            return InOrder(ordered, speeds, when, remarks);
        }

        Sentence? wrong =
            stated.Select(p => p.Fault).FirstOrDefault(f => f is not null)
            ?? (
                stated.GroupBy(p => p.Trial).FirstOrDefault(g => g.Count() > 1) is { } shared
                    ? Sentence.Of($"two speeds name {shared.Key!.File}")
                    : null
            );
        if (wrong is not null)
        {
            remarks.Add($"{when}: {wrong}, so none of that day is used. Correct the notes.");
            return [];
        }

        if (stated.Length < speeds.Length)
        {
            remarks.Add(
                $"{when}: {stated.Length} of {speeds.Length} speeds name their recording; the others are not used, because nobody knows whose they are."
            );
        }

        return [.. stated.Select(p => (p.Trial!, p.Speed))];
    }

    private static ImmutableArray<(MeasuredTrial, ScreenResult)> InOrder(
        MeasuredTrial[] ordered,
        ScreenResult[] speeds,
        Sentence when,
        ICollection<Sentence> remarks
    )
    {
        if (speeds.Length != ordered.Length || speeds.Any(s => s.TrialNumber < 1 || s.TrialNumber > ordered.Length))
        {
            remarks.Add(
                $"{when}: {Jumps(ordered.Length)} recorded and {Speeds(speeds.Length)} written, so nobody knows which speed is whose and none is used. Write the recording's name into the note of each run-up-speed."
            );
            return [];
        }

        remarks.Add(
            $"{when}: speeds and recordings were paired by their order, because no speed names its recording. One in the wrong place bends the curve."
        );
        return [.. speeds.Select(s => (ordered[s.TrialNumber!.Value - 1], s))];
    }

    /// <summary>The jump that a person said it is; null without a word, or with a fault where the word is of nothing there.</summary>
    private static MeasuredTrial? Stated(MeasuredTrial[] trials, ScreenResult speed, out Sentence? fault)
    {
        fault = null;
        string[] words = [.. NamesIn(speed.Note)];
        MeasuredTrial[] named = [.. trials.Where(t => words.Any(w => IsOf(w, t.File)))];
        if (named.Length > 1)
        {
            fault = $"the note of trial {speed.TrialNumber} names {Jumps(named.Length)}";
            return null;
        }

        if (named.Length == 1)
        {
            return named[0];
        }

        if (words.Length > 0)
        {
            fault = $"the note of trial {speed.TrialNumber} names {words[0]}, which is none of them";
            return null;
        }

        MeasuredTrial[] numbered =
        [
            .. trials.Where(t =>
                t.Labels.Note is { } note
                && TrialInWords().Match(note) is { Success: true } match
                && int.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture) == speed.TrialNumber
            ),
        ];
        if (numbered.Length > 1)
        {
            fault = $"{numbered.Length} recordings say that they are trial {speed.TrialNumber}";
            return null;
        }

        return numbered.Length == 1 ? numbered[0] : null;
    }

    /// <summary>Words of a note that are names of files.</summary>
    private static IEnumerable<string> NamesIn(string? note) =>
        (note ?? "")
            .Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(w => w.TrimEnd('.').Replace('\\', '/'))
            .Where(w =>
                w.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
                || w.EndsWith(".c3d", StringComparison.OrdinalIgnoreCase)
            );

    private static bool IsOf(string name, string file) =>
        string.Equals(file, name, StringComparison.OrdinalIgnoreCase)
        || file.EndsWith("/" + name, StringComparison.OrdinalIgnoreCase);

    private static Sentence Jumps(int count) => count == 1 ? Sentence.Of($"1 jump") : Sentence.Of($"{count} jumps");

    private static Sentence Speeds(int count) => count == 1 ? Sentence.Of($"1 speed") : Sentence.Of($"{count} speeds");

    private static Sentence FeetOf(Side side) =>
        side switch
        {
            Side.Left => $"off the left foot",
            Side.Right => $"off the right foot",
            _ => $"off both feet",
        };

    [GeneratedRegex(@"\btrial\s*(?<number>\d{1,3})\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex TrialInWords();
}
