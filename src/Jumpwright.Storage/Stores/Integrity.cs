using System.Collections.Immutable;
using System.Data;
using System.Data.Common;
using Jumpwright.Storage.Stores.Rows;
using Microsoft.EntityFrameworkCore;

namespace Jumpwright.Storage.Stores;

/// <summary>Whether the store still holds what it took.</summary>
internal static class Integrity
{
    public static ImmutableArray<string> Check(StoreContext context)
    {
        var faults = new List<string>();
        faults.AddRange(
            Ask(context, "PRAGMA integrity_check;").Where(a => a != "ok").Select(a => "The database is damaged: " + a)
        );
        faults.AddRange(
            Ask(context, "PRAGMA foreign_key_check;").Select(t => $"A row of the table {t} points to nothing.")
        );
        foreach (RawRow raw in context.Raw.OrderBy(r => r.Sha256).AsEnumerable())
        {
            if (RawBytes.Unpack(raw) is null)
            {
                faults.Add(StoreRefusals.Damaged(raw.Sha256).Sentence);
            }
        }

        foreach (MeasurementRow row in context.Measurements.OrderBy(m => m.Id).AsEnumerable())
        {
            if (MeasurementIds.Of(row.Sha256, row.Version, row.Manifest) != row.Id)
            {
                faults.Add($"The measurement {row.Id} does not belong to its bytes and labels: import again.");
            }
        }

        return [.. faults];
    }

    private static List<string> Ask(StoreContext context, string pragma)
    {
        DbConnection connection = context.Database.GetDbConnection();
        bool wasOpen = connection.State == ConnectionState.Open;
        if (!wasOpen)
        {
            connection.Open();
        }

        using DbCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // Two pragmas, written above.
        command.CommandText = pragma;
#pragma warning restore CA2100
        var answers = new List<string>();
        using DbDataReader reader = command.ExecuteReader();
        while (reader.Read())
        {
            answers.Add(reader.GetString(0));
        }

        return answers;
    }
}
