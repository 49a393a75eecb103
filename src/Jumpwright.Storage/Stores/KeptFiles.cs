using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;

namespace Jumpwright.Storage.Stores;

/// <summary>The squad's own files as the last import kept them, for what stands in no row of its own.</summary>
internal static class KeptFiles
{
    /// <summary>The folder read again from the kept bytes, or null when something of it is damaged.</summary>
    public static SquadFolder? Read(StoreContext context, string name)
    {
        var files = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);
        foreach (TableFileRow file in context.TableFiles.Where(f => !f.Missing).ToArray())
        {
            RawRow? raw = context.Raw.SingleOrDefault(r => r.Sha256 == file.Sha256);
            if (raw is null || RawBytes.Unpack(raw) is not { } bytes)
            {
                return null;
            }

            files[file.Name] = bytes;
        }

        return SquadFolder.Read(name, files).TryGet(out SquadFolder? folder, out _) ? folder : null;
    }
}
