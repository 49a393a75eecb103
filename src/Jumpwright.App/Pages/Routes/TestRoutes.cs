using System.Collections.Concurrent;
using System.Collections.Immutable;
using Jumpwright.App.Desk;
using Jumpwright.App.Intake;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Pages.Routes;

/// <summary>
/// Tests done with a tape, a watch or an eye, typed in a page: written into the folder's screens.csv, which is then taken in as after any
/// change. Not under the addresses that paired devices reach, since an effusion closes.
/// </summary>
internal static class TestRoutes
{
    /// <summary>The field that tells one filled form from the next, so that sending it twice writes once.</summary>
    public const string Once = "once";

    private const string Form = "tests";
    private const int LongestOnce = 40;

    public static void Map(WebApplication app, FrontDesk desk)
    {
        var sent = new ConcurrentDictionary<string, byte>(StringComparer.Ordinal);
        app.MapGet("/tests/{id}", (string id) => Page(desk, id));
        app.MapPost(
            "/tests/{id}",
            async (string id, HttpRequest request, CancellationToken cancel) =>
            {
                IFormCollection form = await request.ReadFormAsync(cancel);
                return Take(desk, id, form, sent, cancel);
            }
        );
    }

    private static IResult Take(
        FrontDesk desk,
        string id,
        IFormCollection form,
        ConcurrentDictionary<string, byte> sent,
        CancellationToken cancel
    )
    {
        if (desk.Book.Find(id) is not { } leaf)
        {
            return Answers.NotFound(desk.Book);
        }

        if (desk.Opened.Folder is null)
        {
            return Answers.Told("tests.no-folder", StatusCodes.Status409Conflict);
        }

        string once = form[Once].ToString();
        if (once.Length is > 0 and <= LongestOnce && !sent.TryAdd(once, 0))
        {
            return new SeeOther(Paths.Athlete(id) + "#screens");
        }

        (IReadOnlyList<IReadOnlyDictionary<string, string>> rows, TypedTests.Fault? fault) = TypedTests.Of(
            form,
            leaf.History,
            desk.Book.Day
        );
        if (fault is not null)
        {
            sent.TryRemove(once, out _);
            return Page(desk, id, new FormFault(Form, fault.Field, new Piece(fault.Words), form));
        }

        Outcome<ImportReport> written = desk.Change<Outcome<ImportReport>>(squad =>
            TypedScreens.Add(squad.Folder!, rows).Then(_ => squad.ImportAgain(null, cancel))
        );
        if (!written.TryGet(out _, out Refusal? refusal))
        {
            sent.TryRemove(once, out _);
            return Page(
                desk,
                id,
                new FormFault(Form, "date", SpokenSentences.Of(RecalledSentences.Of(refusal.Sentence)), form)
            );
        }

        return new SeeOther(Paths.Athlete(id) + "#screens");
    }

    private static IResult Page(FrontDesk desk, string id, FormFault? fault = null) =>
        desk.Book.Find(id) is { } leaf
            ? Answers.Page<TestsPage>(
                new
                {
                    desk.Book,
                    Leaf = leaf,
                    HasFolder = desk.Opened.Folder is not null,
                    Fault = fault,
                }
            )
            : Answers.NotFound(desk.Book);
}
