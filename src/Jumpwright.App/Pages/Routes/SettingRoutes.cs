using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Settings;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Units, language, the lock; everything out, an athlete out, a parent's consent.</summary>
internal static class SettingRoutes
{
    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapGet("/settings", () => Page(desk, null));
        app.MapPost(
            "/settings/speech",
            async (HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                string language = form["language"].ToString();
                desk.Keep(
                    desk.Settings.Now with
                    {
                        Units =
                            form["units"] == nameof(UnitSystem.InchPound) ? UnitSystem.InchPound : UnitSystem.Metric,
                        Language = TextBook.Languages.Contains(language) ? language : null,
                    }
                );
                return new SeeOther("/settings");
            }
        );
        app.MapPost(
            "/settings/lock",
            async (HttpRequest request, CancellationToken cancel) =>
                Page(desk, Lock(desk, await request.ReadFormAsync(cancel)))
        );
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
                    form["again"].ToString().Trim() != id ? TextBook.T["settings.erase.not-typed"] : Erase(desk, id)
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
                    return Page(desk, TextBook.T["settings.minors.who"]);
                }

                ConsentState now = Consent.Of(id, desk.Journal, SquadZone.Of(desk.Book.Material.Squad.TimeZone)).State;
                string word = form["given"].ToString();
                if (
                    word == "yes"
                    && desk.Book.Find(id)?.Athlete.Name is { } own
                    && string.Equals(own.Trim(), by, StringComparison.CurrentCultureIgnoreCase)
                )
                {
                    return Page(desk, TextBook.T["settings.minors.own"]);
                }

                if (word is not ("yes" or "no"))
                {
                    return Page(desk, TextBook.T["settings.minors.choose"]);
                }

                if (word == "no" && now is ConsentState.Declined or ConsentState.TakenBack)
                {
                    return Page(desk, TextBook.T["settings.minors.nothing"]);
                }

                desk.Write(
                    JournalWord.Now(EntryKinds.Consent, id, null, "settings page", new ConsentEntry(by, word == "yes"))
                );
                return new SeeOther("/settings");
            }
        );
    }

    /// <summary>Sets, changes or takes away the lock; what opens it now is needed for the last two.</summary>
    private static string Lock(FrontDesk desk, IFormCollection form)
    {
        HouseSettings now = desk.Settings.Now;
        string word = form["new"].ToString();
        if (now.Lock is { } old && !old.Opens(form["old"].ToString()))
        {
            return TextBook.T["settings.lock.wrong"];
        }

        if (form["do"] == "off")
        {
            desk.Keep(now with { Lock = null });
            return TextBook.T["settings.lock.removed"];
        }

        if (!int.TryParse(form["minutes"], out int minutes) || minutes is < 1 or > 240)
        {
            return TextBook.T["settings.lock.minutes.wrong"];
        }

        if (word.Length is < LockSettings.LeastLetters or > LockSettings.MostLetters || word != form["again"])
        {
            return TextBook.T["settings.lock.short", LockSettings.LeastLetters];
        }

        desk.Keep(now with { Lock = LockSettings.Of(word, minutes, form["here"] == "yes") });
        return TextBook.T["settings.lock.done"];
    }

    /// <summary>Out of the folder, then out of the store; the sentence says what this program can't reach.</summary>
    private static string Erase(FrontDesk desk, string id) =>
        desk.Change(squad =>
        {
            if (squad.Material.Dossiers.All(d => d.Athlete.Id != id))
            {
                return TextBook.T["settings.erase.nobody"];
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
                return SpokenSentences.Text(refusal.Said);
            }

            squad.Reload();
            if (
                squad.Folder is not null
                && !squad.ImportAgain(null, CancellationToken.None).TryGet(out _, out Refusal? why)
            )
            {
                return SpokenSentences.Text(why.Said);
            }

            return TextBook.T["settings.erase.done", id, report.Rows, report.Recordings, report.Plans, files]
                + (
                    report.RefusedWithoutAthlete > 0
                        ? " " + TextBook.Counted("settings.erase.nameless", report.RefusedWithoutAthlete)
                        : ""
                );
        });

    private static IResult Page(FrontDesk desk, string? says) =>
        Answers.Page<SettingsPage>(
            new
            {
                desk.Book,
                desk.Journal,
                Kept = desk.Settings.Now,
                Says = says ?? desk.Settings.Trouble,
            }
        );
}
