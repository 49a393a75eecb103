using Jumpwright.App.Desk;
using Jumpwright.App.Wording;

namespace Jumpwright.App.Pages;

/// <summary>
/// Answers with the page as it was written out before, while the desk holds the same and the same is asked for in the same
/// language and units. While somebody is still being read, every page is written anew.
/// </summary>
internal sealed class ShelfFilter(FrontDesk desk, string contentType = WrittenPage.Html) : IEndpointFilter
{
    private const int LongestQuery = 100;

    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        HttpRequest request = context.HttpContext.Request;
        if (!desk.IsSettled || !HttpMethods.IsGet(request.Method) || request.QueryString.Value?.Length > LongestQuery)
        {
            return await next(context);
        }

        // The shelf is taken before the page is: a page can only be newer than its shelf, which nobody asks then.
        PageShelf shelf = desk.Shelf;
        Speech speech = Speech.Now;
        string key = string.Join(
            '\n',
            request.Path.Value,
            request.QueryString.Value,
            speech.Language,
            speech.Units,
            // Changes at midnight.
            SeenWords.Of(desk.Book)
        );
        if (shelf.Find(key) is { } there && await there is { } page)
        {
            return Results.Bytes(page, contentType);
        }

        object? made = await next(context);
        return made is WrittenPage fresh && shelf.Take(key) is { } writing
            ? new Writing(fresh, shelf, key, writing)
            : made;
    }

    private sealed class Writing(WrittenPage made, PageShelf shelf, string key, TaskCompletionSource<byte[]?> writing)
        : IResult
    {
        public async Task ExecuteAsync(HttpContext httpContext)
        {
            byte[]? page = null;
            try
            {
                page = await made.Write(httpContext.RequestServices);
            }
            finally
            {
                shelf.Put(key, writing, made.Status == StatusCodes.Status200OK ? page : null);
            }

            await made.Answer(httpContext, page);
        }
    }
}
