using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.App.Intake;

/// <summary>Opens recordings and measures them, several at a time, and gives them back in the order they were listed.</summary>
internal static class MeasureFiles
{
    /// <summary>Beyond this a file is no recording of a jump: two plates at 2000 Hz fill it in about an hour.</summary>
    public const long LargestFileBytes = 256L * 1024 * 1024;

    /// <summary>Measures each entry; at most <paramref name="jobs"/> at a time, in order.</summary>
    public static async IAsyncEnumerable<MeasuredFile> InOrder(
        IEnumerable<RecordingEntry> entries,
        int jobs,
        [EnumeratorCancellation] CancellationToken cancel
    )
    {
        using var turns = new SemaphoreSlim(jobs);
        var under = new Queue<Task<MeasuredFile>>();
        int ahead = jobs * 4;
        try
        {
            foreach (RecordingEntry entry in entries)
            {
                while (under.Count >= ahead)
                {
                    yield return await under.Dequeue();
                }

                under.Enqueue(InTurn(entry, turns, cancel));
            }

            while (under.Count > 0)
            {
                yield return await under.Dequeue();
            }
        }
        finally
        {
            // Those still running use the turns; wait for them before the turns are disposed of.
            await Task.WhenAll(under)
                .ContinueWith(
                    static _ => { },
                    CancellationToken.None,
                    TaskContinuationOptions.None,
                    TaskScheduler.Default
                );
        }
    }

    /// <summary>Measures one recording.</summary>
    public static MeasuredFile One(RecordingEntry entry)
    {
        if (entry.Refusal is { } already)
        {
            return new MeasuredFile(entry.File, null, entry.Labels?.Task, [], already);
        }

        byte[] bytes;
        try
        {
            var file = new FileInfo(entry.FullPath);
            if (file.Length > LargestFileBytes)
            {
                return Unopened(
                    entry,
                    $"is {file.Length / 1048576} MB, too large for one recording; cut it into trials"
                );
            }

            bytes = File.ReadAllBytes(entry.FullPath);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Unopened(entry, "is listed but is not there; put the file in its place or take its row out");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Unopened(entry, $"could not be opened ({e.Message.TrimEnd('.')}); check that you may read it");
        }

        string sha256 = Convert.ToHexStringLower(SHA256.HashData(bytes));
        if (!Recording.From(bytes, entry.Labels).TryGet(out Recording? recording, out Refusal? unread))
        {
            return new MeasuredFile(entry.File, sha256, entry.Labels?.Task, [], unread);
        }

        return new MeasuredFile(entry.File, sha256, recording.Labels.Task, recording.Warnings, Measuring.Of(recording));
    }

    private static async Task<MeasuredFile> InTurn(RecordingEntry entry, SemaphoreSlim turns, CancellationToken cancel)
    {
        await turns.WaitAsync(cancel);
        try
        {
            return await Task.Run(() => One(entry), cancel);
        }
        finally
        {
            turns.Release();
        }
    }

    private static MeasuredFile Unopened(RecordingEntry entry, string what) =>
        new(entry.File, null, entry.Labels?.Task, [], new Refusal($"{entry.File} {what}."));
}
