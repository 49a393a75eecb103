using System.Text.Json;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Everything out, an athlete out, a parent's consent.</summary>
internal static class SettingRoutes
{
    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet("/settings", () => Page(desk, null));
        app.MapGet(
            "/export/everything.zip",
            () =>
            {
                using var bytes = new MemoryStream();
                Archive.Write(desk.Opened.Folder, desk.Opened.Store, bytes);
                return Results.File(bytes.ToArray(), "application/zip", "jumpwright-everything.zip");
            }
        );
        app.MapPost(
            "/settings/erase",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                string id = form["athlete"].ToString();
                return Page(
                    desk,
                    form["again"].ToString().Trim() != id
                        ? "Nothing was erased: the id was not typed as it stands."
                        : Erase(desk, id)
                );
            }
        );
        app.MapPost(
            "/settings/consent",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                string id = form["athlete"].ToString();
                string by = form["by"].ToString().Trim();
                if (desk.Book.Find(id) is null || by.Length is 0 or > 80)
                {
                    return Page(desk, "Say who consents.");
                }

                desk.Write(
                    new JournalEntry(
                        Guid.NewGuid().ToString(),
                        EntryKinds.Consent,
                        id,
                        null,
                        SystemClock.Instance.GetCurrentInstant(),
                        "settings page",
                        JsonSerializer.Serialize(new ConsentEntry(by, form["given"] == "yes"))
                    )
                );
                return new SeeOther("/settings");
            }
        );
    }

    /// <summary>Out of the folder, then out of the store; the sentence says what this program can't reach.</summary>
    private static string Erase(FrontDesk desk, string id) =>
        desk.Change(squad =>
        {
            if (squad.Material.Histories.All(h => h.Athlete.Id != id))
            {
                return $"There is no athlete '{id}'.";
            }

            int files = 0;
            if (squad.Folder is { } folder)
            {
                string[] theirs = [.. squad.Recordings.Where(r => r.Labels.Athlete == id).Select(r => r.File)];
                files = FolderEraser.Erase(folder, id, theirs);
                byte[] table = File.Exists(Path.Combine(folder, SquadTables.Trials))
                    ? File.ReadAllBytes(Path.Combine(folder, SquadTables.Trials))
                    : [];
                foreach (string file in theirs.Where(_ => table.Length > 0))
                {
                    table = ManifestEditor.Without(table, file);
                }

                if (table.Length > 0)
                {
                    File.WriteAllBytes(Path.Combine(folder, SquadTables.Trials), table);
                }
            }

            if (!squad.Store.Erase(id).TryGet(out ErasureReport? report, out Refusal? refusal))
            {
                return refusal.Sentence;
            }

            squad.Reload();
            if (
                squad.Folder is not null
                && !squad.ImportAgain(null, CancellationToken.None).TryGet(out _, out Refusal? why)
            )
            {
                return why.Sentence;
            }

            return $"{id} is erased: {report.Rows} rows, {report.Recordings} recordings with their bytes, {report.Plans} plans, {files} files of the folder. "
                + "Not reached: printed cards and coach's sheets, exports and backups made before, and tablets that logged sessions. "
                + (
                    report.RefusedWithoutAthlete > 0
                        ? $"{report.RefusedWithoutAthlete} refused recordings name nobody; look whether one is theirs."
                        : ""
                );
        });

    private static IResult Page(FrontDesk desk, string? says) =>
        new RazorComponentResult<SettingsPage>(
            new
            {
                desk.Book,
                desk.Journal,
                Says = says,
            }
        );
}
