using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders.Csv;

namespace Jumpwright.Storage.Folders;

/// <summary>Writes what was asked for in the pages into the squad folder, which is the truth. No moment has half a file.</summary>
public static class SquadFolderEditor
{
    /// <summary>squad.yaml as text; a sentence where it can't be read.</summary>
    public static Outcome<string> SquadYaml(string folder)
    {
        try
        {
            return File.ReadAllText(Path.Combine(folder, SquadTables.Squad));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Refusal($"{SquadTables.Squad} can't be read ({e.GetType().Name}): check that it is there.");
        }
    }

    /// <summary>Keeps squad.yaml.</summary>
    public static Outcome<bool> Keep(string folder, string squadYaml) =>
        Write(folder, SquadTables.Squad, Encoding.UTF8.GetBytes(squadYaml));

    /// <summary>Adds a row to overrides.csv.</summary>
    /// <param name="folder">A squad folder.</param>
    /// <param name="cells">Cells by column.</param>
    public static Outcome<bool> AddOverride(string folder, IReadOnlyDictionary<string, string> cells) =>
        Overrides(folder).Then(table => Write(folder, SquadTables.Overrides, RowAppender.With(table, cells)));

    /// <summary>Takes out every row of overrides.csv for which that holds.</summary>
    /// <param name="folder">A squad folder.</param>
    /// <param name="limit">Id of the limit.</param>
    /// <param name="athlete">For whom; null: for the whole squad.</param>
    public static Outcome<bool> DropOverrides(string folder, string limit, string? athlete) =>
        Overrides(folder)
            .Then(table =>
                Write(
                    folder,
                    SquadTables.Overrides,
                    RowCutter.Without(table, ("limit", limit), ("athlete", athlete ?? ""))
                )
            );

    private static Outcome<byte[]> Overrides(string folder)
    {
        string path = Path.Combine(folder, SquadTables.Overrides);
        try
        {
            return File.Exists(path)
                ? File.ReadAllBytes(path)
                : Encoding.UTF8.GetBytes(TableSchema.Overrides.Header + "\n");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Refusal(
                $"{SquadTables.Overrides} can't be read ({e.GetType().Name}): close it in other programs."
            );
        }
    }

    private static Outcome<bool> Write(string folder, string name, byte[] bytes)
    {
        string path = Path.Combine(folder, name);
        try
        {
            WholeFile.Replace(path, bytes);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Refusal(
                $"{name} can't be written ({e.GetType().Name}): close it in other programs and check its permissions. Nothing was changed."
            );
        }
    }
}
