using System.Collections.Concurrent;

namespace Jumpwright.App.Desk;

/// <summary>
/// Pages as they were written out, for as long as what they show stays. Whoever asks for one that is being written waits for it.
/// </summary>
/// <param name="most">So many bytes are kept; with one more the shelf is cleared.</param>
internal sealed class PageShelf(long most = PageShelf.MostBytes)
{
    private const long MostBytes = 32 * 1024 * 1024;

    private readonly ConcurrentDictionary<string, Task<byte[]?>> _pages = new(StringComparer.Ordinal);
    private long _bytes;

    /// <summary>The page, if it stands here or is being written.</summary>
    public Task<byte[]?>? Find(string key) => _pages.GetValueOrDefault(key);

    /// <summary>Takes the page to be written by the caller; null where somebody else has it.</summary>
    public TaskCompletionSource<byte[]?>? Take(string key)
    {
        var writing = new TaskCompletionSource<byte[]?>(TaskCreationOptions.RunContinuationsAsynchronously);
        return _pages.TryAdd(key, writing.Task) ? writing : null;
    }

    /// <summary>Puts a page that was taken on the shelf; null when it came to nothing, so that the next one writes it.</summary>
    public void Put(string key, TaskCompletionSource<byte[]?> writing, byte[]? page)
    {
        if (page is null)
        {
            _pages.TryRemove(key, out _);
        }
        else if (Interlocked.Add(ref _bytes, page.Length) > most)
        {
            Interlocked.Exchange(ref _bytes, 0);
            _pages.Clear();
        }

        writing.SetResult(page);
    }
}
