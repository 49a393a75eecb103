using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Desk;

/// <summary>A squad folder or a store, opened for as long as its recordings are wanted.</summary>
public sealed class OpenedSquad : IDisposable
{
    private readonly Store _store;
    private readonly Lock _one = new();

    private OpenedSquad(Store store, StoredSquad squad)
    {
        _store = store;
        OwnExercises own = OwnExercises.Join(Catalogue.Standard, squad.Squad.ExerciseFiles);
        Material = new SquadMaterial(
            squad.Squad,
            squad.Histories,
            [
                .. squad
                    .Recordings.Where(r => r.Refusal is not null)
                    .Select(r => new RefusedRecording(r.File, r.Labels.Athlete, r.Refusal!.Sentence)),
            ],
            [.. squad.Problems.Select(p => p.Sentence), .. own.Remarks],
            [.. squad.StopsPlanning.Select(p => p.Sentence)],
            Raw
        )
        {
            Catalogue = own.Catalogue,
        };
    }

    public SquadMaterial Material { get; }

    /// <summary>Opens a squad folder (measured afresh, nothing written) or a store, whichever the path is.</summary>
    public static Outcome<OpenedSquad> At(string path, IProgress<ImportProgress>? progress, CancellationToken cancel)
    {
        if (!Directory.Exists(path))
        {
            return Store.Open(path, TimeProvider.System).Then(Load);
        }

        var memory = Store.InMemory(TimeProvider.System);
        return memory.Import(path, null, progress, cancel).Then(_ => Load(memory));
    }

    public void Dispose() => _store.Dispose();

    private static Outcome<OpenedSquad> Load(Store store)
    {
        if (store.Load().TryGet(out StoredSquad? squad, out Refusal? refusal))
        {
            return new OpenedSquad(store, squad);
        }

        store.Dispose();
        return refusal;
    }

    private byte[]? Raw(string sha256)
    {
        lock (_one)
        {
            return _store.RawBytes(sha256).TryGet(out ReadOnlyMemory<byte> bytes, out _) ? bytes.ToArray() : null;
        }
    }
}
