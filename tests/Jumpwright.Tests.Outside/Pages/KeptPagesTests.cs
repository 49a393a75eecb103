using System.Net;
using System.Text;
using Jumpwright.App.Desk;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Pages are written out once; whatever is written, said in another language or in other units, is written out anew.</summary>
public class KeptPagesTests
{
    [Fact]
    public async Task Page_IsWrittenOutOnce_UntilSomethingIsWritten()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        foreach (var leaf in squad.Desk.Book.Leaves)
        {
            leaf.WorkOut();
        }

        Assert.True(squad.Desk.IsSettled);
        string first = await Get(squad, "/athletes/a02");
        PageShelf shelf = squad.Desk.Shelf;
        Assert.Equal(first, await Get(squad, "/athletes/a02"));
        Assert.Same(shelf, squad.Desk.Shelf);
        Assert.Contains(" cm", first);
        Assert.DoesNotContain("behind the shin", first);

        using (
            var said = new FormUrlEncodedContent(
                new Dictionary<string, string>(StringComparer.Ordinal)
                {
                    ["score"] = "3",
                    ["site"] = "behind the shin",
                    ["side"] = "left",
                    ["when"] = "during",
                }
            )
        )
        using (
            HttpResponseMessage kept = await squad.Client.PostAsync(
                new Uri("/athletes/a02/felt", UriKind.Relative),
                said,
                TestContext.Current.CancellationToken
            )
        )
        {
            Assert.Equal(HttpStatusCode.SeeOther, kept.StatusCode);
        }

        Assert.NotSame(shelf, squad.Desk.Shelf);
        Assert.Contains("behind the shin", await Get(squad, "/athletes/a02"));
        string english = await Get(squad, "/");
        Assert.NotEqual(english, await Get(squad, "/", "de"));
        Assert.Equal(english, await Get(squad, "/"));
    }

    [Fact]
    public async Task Shelf_SecondAskerWaits_AFailureIsNotKept_AndAFullOneIsCleared()
    {
        var shelf = new PageShelf(most: 10);
        TaskCompletionSource<byte[]?> writing = shelf.Take("a")!;
        Assert.Null(shelf.Take("a"));
        Task<byte[]?> waits = shelf.Find("a")!;
        Assert.False(waits.IsCompleted);
        shelf.Put("a", writing, "one"u8.ToArray());
        Assert.Equal("one", Encoding.UTF8.GetString((await waits)!));

        shelf.Put("b", shelf.Take("b")!, null);
        Assert.Null(shelf.Find("b"));
        shelf.Put("c", shelf.Take("c")!, new byte[9]);
        Assert.Null(shelf.Find("a"));
    }

    private static async Task<string> Get(OwnSquad squad, string path, string language = "en")
    {
        using var asked = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.Relative));
        asked.Headers.AcceptLanguage.ParseAdd(language);
        using HttpResponseMessage answer = await squad.Client.SendAsync(asked, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("text/html", answer.Content.Headers.ContentType!.MediaType);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }
}
