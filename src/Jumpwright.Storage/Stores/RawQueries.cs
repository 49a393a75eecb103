using Jumpwright.Storage.Stores.Rows;

namespace Jumpwright.Storage.Stores;

/// <summary>Reads kept bytes.</summary>
internal static class RawQueries
{
    /// <summary>The row of one content, packed; null when the store has none.</summary>
    public static RawRow? Find(PlainReader plain, string sha256) =>
        plain
            .Rows(
                "SELECT length, packed FROM raw WHERE sha256 = $sha",
                r => new RawRow
                {
                    Sha256 = sha256,
                    Length = r.GetInt64(0),
                    Packed = (byte[])r[1],
                },
                ("$sha", sha256)
            )
            .FirstOrDefault();
}
