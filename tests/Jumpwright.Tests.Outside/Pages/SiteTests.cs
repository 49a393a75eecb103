using System.Net;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What the server answers, without a browser.</summary>
[Collection("pages")]
public class SiteTests(ServedDemo demo)
{
    [Fact]
    public async Task Pages_ForbidForeignHosts_AndScriptsThatAreNotThePrograms()
    {
        using HttpResponseMessage answer = await Get("/");
        string policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        string html = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain("javascript:", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch("<script(?! src=\"/assets/)", html);
    }

    [Fact]
    public async Task Request_ThatNamesAnotherHost_IsTurnedAway()
    {
        using var client = new HttpClient();
        using var asked = new HttpRequestMessage(HttpMethod.Get, demo.Address + "/");
        asked.Headers.Host = "club.example";
        using HttpResponseMessage answer = await client.SendAsync(asked, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
        Assert.Equal("", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("/nothing-here")]
    [InlineData("/athletes/nobody")]
    [InlineData("/cards/no-session/a01")]
    [InlineData("/assets/nothing.css")]
    public async Task UnknownAddress_Is404(string path)
    {
        using HttpResponseMessage answer = await Get(path);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task CardAndSheet_AreServedAsPdf()
    {
        foreach (string path in new[] { $"/cards/{demo.FirstSession}/a01.pdf", $"/sheets/{demo.FirstSession}.pdf" })
        {
            using HttpResponseMessage answer = await Get(path);
            Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.MediaType);
            byte[] pdf = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
            Assert.Equal("%PDF-"u8.ToArray(), pdf[..5]);
        }
    }

    [Theory]
    [InlineData("/assets/site.css", "text/css")]
    [InlineData("/assets/icon.svg", "image/svg+xml")]
    [InlineData("/assets/lato-regular.ttf", "font/ttf")]
    [InlineData("/assets/lato-bold.ttf", "font/ttf")]
    public async Task StyleAndFonts_ComeFromTheProgramItself(string path, string type)
    {
        using HttpResponseMessage answer = await Get(path);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType?.MediaType);
    }

    private async Task<HttpResponseMessage> Get(string path)
    {
        using var client = new HttpClient();
        return await client.GetAsync(new Uri(demo.Address + path), TestContext.Current.CancellationToken);
    }
}
