using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Commands;

/// <summary>Work on a store, telling how far it is.</summary>
internal static class StoreWork
{
    /// <summary>Opens the store, does the work and gives what came of it.</summary>
    /// <param name="terminal">Where to draw.</param>
    /// <param name="path">The store's file.</param>
    /// <param name="title">What is being done, in words.</param>
    /// <param name="work">The work, given where it tells how far it is.</param>
    /// <exception cref="RefusedException">The store can't be opened, or the work was refused.</exception>
    public static async Task<T> On<T>(
        Terminal terminal,
        string path,
        string title,
        Func<Store, IProgress<ImportProgress>?, Outcome<T>> work
    )
        where T : class
    {
        if (!Store.Open(path, TimeProvider.System).TryGet(out Store? store, out Refusal? refusal))
        {
            throw new RefusedException(refusal);
        }

        using (store)
        {
            Outcome<T> outcome = await WorkProgress.OfImport(terminal, title, progress => work(store, progress));
            return outcome.TryGet(out T? done, out Refusal? refused) ? done : throw new RefusedException(refused);
        }
    }
}
