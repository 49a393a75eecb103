using System.Globalization;
using System.Text;
using Jumpwright.Storage.Stores;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>Every row of every table in the order of its keys, as text: what two stores are compared by.</summary>
internal static class Dump
{
    public static string[] Rows(Store store) =>
        store.Inspect(context =>
        {
            var lines = new List<string>();
            foreach (
                string table in context
                    .Model.GetEntityTypes()
                    .Select(t => t.GetTableName()!)
                    .Order(StringComparer.Ordinal)
            )
            {
                IEntityType type = context.Model.GetEntityTypes().Single(t => t.GetTableName() == table);
                string keys = string.Join(
                    ", ",
                    type.FindPrimaryKey()!.Properties.Select(p => $"\"{p.GetColumnName()}\"")
                );
                using var command = context.Database.GetDbConnection().CreateCommand();
                command.CommandText = $"SELECT * FROM \"{table}\" ORDER BY {keys}";
                using var reader = command.ExecuteReader();
                while (reader.Read())
                {
                    var line = new StringBuilder(table);
                    for (int i = 0; i < reader.FieldCount; i++)
                    {
                        line.Append('|').Append(reader.GetName(i)).Append('=').Append(Text(reader.GetValue(i)));
                    }

                    lines.Add(line.ToString());
                }
            }

            return lines.ToArray();
        });

    private static string Text(object value) =>
        value switch
        {
            DBNull => "-",
            byte[] bytes => Convert.ToHexString(bytes),
            double number => number.ToString("R", CultureInfo.InvariantCulture),
            _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
        };
}
