using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Microsoft.AspNetCore.Components;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Answers that several routes give.</summary>
internal static class Answers
{
    /// <summary>No entry that somebody types is longer, so a larger body is no such thing.</summary>
    public const int MostBytes = 64 * 1024;

    public static IResult NotFound(Workbook book) =>
        Page<NotFoundPage>(new { Book = book }, StatusCodes.Status404NotFound);

    /// <summary>
    /// A page. Routes give this and not the result's own type, because what binds routes when the program is compiled is made
    /// before the pages are.
    /// </summary>
    public static IResult Page<TPage>(object? parameters = null, int status = StatusCodes.Status200OK)
        where TPage : IComponent => new PageResult<TPage>(parameters, status);

    /// <summary>A sentence why something was not done, and its language: the core's are English.</summary>
    public static IResult Refused(
        string sentence,
        int status = StatusCodes.Status409Conflict,
        string language = "en"
    ) => new NotDone(sentence, status, language);

    /// <summary>The same in the language of the reader.</summary>
    /// <param name="key">Of the sentence in the text book.</param>
    /// <param name="status">The status it is answered with.</param>
    public static IResult Told(string key, int status) => Refused(TextBook.T[key], status, Speech.Now.Language);

    /// <summary>What measuring or taking in refused, in the language of the page.</summary>
    public static IResult Refused(Refusal refusal)
    {
        (string text, bool isEnglish) = SpokenSentences.Of(RecalledSentences.Of(refusal.Sentence));
        return isEnglish ? Refused(text) : Refused(text, language: Speech.Now.Language);
    }

    /// <summary>The body as an object, or null where it is too long or of another shape.</summary>
    public static async Task<T?> Body<T>(HttpRequest request, int most = MostBytes)
        where T : class
    {
        if (request.ContentLength > most || !request.HasJsonContentType())
        {
            return null;
        }

        try
        {
            using var bytes = new MemoryStream();
            byte[] part = new byte[8192];
            int read;
            while ((read = await request.Body.ReadAsync(part, request.HttpContext.RequestAborted)) > 0)
            {
                if (bytes.Length + read > most)
                {
                    return null;
                }

                bytes.Write(part, 0, read);
            }

            return System.Text.Json.JsonSerializer.Deserialize<T>(bytes.GetBuffer().AsSpan(0, (int)bytes.Length));
        }
        catch (System.Text.Json.JsonException)
        {
            return null;
        }
    }
}
