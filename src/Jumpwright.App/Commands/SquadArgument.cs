using System.CommandLine;
using Jumpwright.App.Desk;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Commands;

/// <summary>Arguments and options that several commands share, and how a squad is opened for them.</summary>
internal static class SquadArgument
{
    public static Argument<string> Squad() =>
        new("SQUAD") { Description = "A squad folder (docs/squad-folder.md), or a store made by import." };

    public static Option<LocalDate> From()
    {
        Option<LocalDate> from = Day("--from");
        from.Description = "First day, for example 2027-01-04. What is known is taken as of that day.";
        from.Required = true;
        return from;
    }

    /// <summary>An option that takes a day.</summary>
    public static Option<LocalDate> Day(string name, params string[] aliases) =>
        new(name, aliases)
        {
            HelpName = "DATE",
            CustomParser = result =>
            {
                if (LocalDatePattern.Iso.Parse(result.Tokens[0].Value) is { Success: true } parsed)
                {
                    return parsed.Value;
                }

                result.AddError($"{name} takes a day such as 2027-01-04, not '{result.Tokens[0].Value}'.");
                return default;
            },
        };

    public static Option<int> Weeks(bool required)
    {
        var weeks = new Option<int>("--weeks")
        {
            Description = "How many weeks, 1 to 12.",
            HelpName = "N",
            Required = required,
            DefaultValueFactory = required ? null : _ => 1,
        };
        weeks.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && (!int.TryParse(result.Tokens[0].Value, out int n) || n is < 1 or > 12))
            {
                result.AddError("--weeks takes a whole number from 1 to 12.");
            }
        });
        return weeks;
    }

    /// <summary>Opens the squad, telling how far it is.</summary>
    /// <exception cref="UsageException">There is nothing at that path.</exception>
    /// <exception cref="RefusedException">It is there, but is no squad.</exception>
    public static Task<OpenedSquad> Open(Terminal terminal, string path, CancellationToken cancel) =>
        Open(terminal, path, progress => OpenedSquad.At(path, progress, cancel));

    /// <summary>The same for the pages, which keep what is written in them: in a store, by default inside the squad folder.</summary>
    public static Task<OpenedSquad> OpenKept(
        Terminal terminal,
        string path,
        string? storeFile,
        CancellationToken cancel
    ) => Open(terminal, path, progress => OpenedSquad.Kept(path, storeFile, progress, cancel));

    /// <summary>The same without waiting for recordings to be looked through, where the squad's own tables are known already.</summary>
    public static Task<OpenedSquad> OpenAtOnce(Terminal terminal, string path, CancellationToken cancel) =>
        Open(terminal, path, progress => OpenedSquad.AtOnce(path, progress, cancel));

    private static async Task<OpenedSquad> Open(
        Terminal terminal,
        string path,
        Func<IProgress<ImportProgress>?, Outcome<OpenedSquad>> open
    )
    {
        if (!File.Exists(path) && !Directory.Exists(path))
        {
            throw new UsageException($"There is neither a squad folder nor a store at '{path}'.");
        }

        Outcome<OpenedSquad> opened = await WorkProgress.OfImport(terminal, "Reading and measuring", open);
        return opened.TryGet(out OpenedSquad? squad, out Refusal? refusal)
            ? squad
            : throw new RefusedException(refusal);
    }
}
