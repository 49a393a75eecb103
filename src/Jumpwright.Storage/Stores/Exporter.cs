using Jumpwright.Quantities;
using Jumpwright.Storage.Stores.Rows;

namespace Jumpwright.Storage.Stores;

/// <summary>Writes the squad folder out again, byte for byte.</summary>
internal static class Exporter
{
    public static Outcome<int> Export(StoreContext context, string folder)
    {
        if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any())
        {
            return StoreRefusals.NotEmpty(folder);
        }

        Directory.CreateDirectory(folder);
        var files = context
            .TableFiles.Where(f => !f.Missing)
            .Select(f => new { Name = f.Name, f.Sha256 })
            .AsEnumerable()
            .Concat(
                context
                    .Recordings.Where(r => r.Sha256 != null)
                    .Select(r => new { Name = r.File, Sha256 = r.Sha256! })
                    .AsEnumerable()
            )
            .OrderBy(f => f.Name, StringComparer.Ordinal);
        string inside = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar;
        int written = 0;
        foreach (var file in files.ToArray())
        {
            RawRow? raw = context.Raw.SingleOrDefault(r => r.Sha256 == file.Sha256);
            if (raw is null || RawBytes.Unpack(raw) is not { } bytes)
            {
                return StoreRefusals.Damaged(file.Sha256);
            }

            string path = Path.GetFullPath(Path.Combine(folder, file.Name));
            if (!path.StartsWith(inside, StringComparison.Ordinal))
            {
                return StoreRefusals.LeadsOut(file.Name);
            }

            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, bytes);
            written++;
        }

        return written;
    }
}
