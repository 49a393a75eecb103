using System.Runtime.CompilerServices;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using Microsoft.Win32.SafeHandles;

namespace Jumpwright.App.Intake;

/// <summary>Opens recordings and measures them, several at a time, and gives them back in the order they were listed.</summary>
internal static class MeasureFiles
{
    /// <summary>Beyond this a file is no recording of a jump: two plates at 2000 Hz fill it in about an hour.</summary>
    public const long LargestFileBytes = 256L * 1024 * 1024;

    /// <summary>Measures each entry; at most <paramref name="jobs"/> at a time, in order.</summary>
    public static async IAsyncEnumerable<MeasuredFile> InOrder(
        IEnumerable<ListedRecording> listed,
        int jobs,
        [EnumeratorCancellation] CancellationToken cancel
    )
    {
        using var turns = new SemaphoreSlim(jobs);
        var under = new Queue<Task<MeasuredFile>>();
        int ahead = jobs * 4;
        try
        {
            foreach (ListedRecording entry in listed)
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

    /// <summary>Measures one recording. A fault of this program is refused too, so that it never stops the others.</summary>
    public static MeasuredFile One(ListedRecording listed)
    {
        if (listed.FullPath is null)
        {
            return Unopened(listed, listed.Fault ?? IntakeRefusals.Unreadable(listed.File));
        }

        try
        {
            using SafeFileHandle handle = File.OpenHandle(listed.FullPath);
            long length = RandomAccess.GetLength(handle);
            if (length > LargestFileBytes)
            {
                return Unopened(listed, IntakeRefusals.TooLarge(listed.File));
            }

            using var seen = new HashedFile(handle);
            MeasuredRecording measured = Measure(listed, seen.Read, length);
            return seen.TryReadOn(length) is { } sha256
                ? new MeasuredFile(listed, sha256, measured)
                : Unopened(listed, IntakeRefusals.Growing(listed.File));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Unopened(listed, IntakeRefusals.Closed(listed.File));
        }
    }

    private static MeasuredRecording Measure(ListedRecording listed, ReadAt read, long length)
    {
        try
        {
            return MeasuredRecording.ByCore(read, length, listed.Labels);
        }
        catch (Exception e) when (e is not (OutOfMemoryException or IOException or UnauthorizedAccessException))
        {
            return Refused(listed, IntakeRefusals.OwnFault(listed.File, e.GetType().Name));
        }
    }

    private static async Task<MeasuredFile> InTurn(ListedRecording entry, SemaphoreSlim turns, CancellationToken cancel)
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

    private static MeasuredFile Unopened(ListedRecording listed, Refusal refusal) =>
        new(listed, null, Refused(listed, refusal));

    private static MeasuredRecording Refused(ListedRecording listed, Refusal refusal) =>
        new(listed.Labels ?? RecordingLabels.None, null, refusal);
}
