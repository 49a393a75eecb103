using Jumpwright.App.Pages.Routes;
using Microsoft.AspNetCore.Http.Features;

namespace Jumpwright.App.Pages;

/// <summary>Reads forms before any route does: one that is too long or broken is answered here, and what is no form has no fields.</summary>
internal static class Forms
{
    private const long MostToHearOut = 32L * 1024 * 1024;

    public static async Task Read(HttpContext context, RequestDelegate next)
    {
        HttpRequest request = context.Request;
        if (Guard.IsRead(request.Method))
        {
            await next(context);
            return;
        }

        if (!request.HasFormContentType)
        {
            context.Features.Set<IFormFeature>(new FormFeature(FormCollection.Empty));
            await next(context);
            return;
        }

        if (request.ContentLength is null or > Answers.MostBytes || !await IsForm(context))
        {
            // Read to its end where that is bearable: a browser that is cut off while it sends shows no sentence.
            if (request.ContentLength is <= MostToHearOut)
            {
                await request.Body.CopyToAsync(Stream.Null, context.RequestAborted);
            }

            await Answers.Told("answer.no-form", StatusCodes.Status400BadRequest).ExecuteAsync(context);
            return;
        }

        await next(context);
    }

    private static async Task<bool> IsForm(HttpContext context)
    {
        try
        {
            await context.Request.ReadFormAsync(context.RequestAborted);
            return true;
        }
        catch (InvalidDataException)
        {
            return false;
        }
    }
}
