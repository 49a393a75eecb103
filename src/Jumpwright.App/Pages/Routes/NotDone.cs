using Jumpwright.App.Desk;
using Microsoft.Net.Http.Headers;

namespace Jumpwright.App.Pages.Routes;

/// <summary>
/// Why something was not done, to whoever asked: a page to a person who sent a form with a browser, JSON to a script or a program.
/// </summary>
/// <param name="sentence">Why, in words.</param>
/// <param name="status">The status it is answered with.</param>
/// <param name="language">The language of the sentence.</param>
internal sealed class NotDone(string sentence, int status, string language) : IResult
{
    /// <summary>Pages need the books; where nobody gave them (before a door was passed), the answer is JSON.</summary>
    public static void Use(HttpContext context, FrontDesk desk) => context.Items[typeof(FrontDesk)] = desk;

    public Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        IResult answer =
            httpContext.Items[typeof(FrontDesk)] is FrontDesk desk && IsPersonsForm(httpContext.Request)
                ? new PageResult<NotDonePage>(
                    new
                    {
                        desk.Book,
                        Sentence = sentence,
                        Spoken = language,
                        Back = From(httpContext.Request),
                    },
                    status
                )
                : Results.Json(new { refused = sentence, lang = language }, statusCode: status);
        return answer.ExecuteAsync(httpContext);
    }

    private static bool IsPersonsForm(HttpRequest request) =>
        HttpMethods.IsPost(request.Method)
        && !request.HasJsonContentType()
        && request
            .GetTypedHeaders()
            .Accept.Any(a => a.MediaType.Equals("text/html", StringComparison.OrdinalIgnoreCase));

    /// <summary>The page it was sent from, where that is one of ours.</summary>
    private static string From(HttpRequest request) =>
        request.GetTypedHeaders().Referer is { } page && page.Authority == request.Host.Value ? page.PathAndQuery : "/";
}
