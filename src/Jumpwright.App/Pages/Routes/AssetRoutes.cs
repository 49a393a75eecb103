using System.Collections.Concurrent;
using System.Security.Cryptography;
using Jumpwright.Paper;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Style, script and fonts, all from this program. A browser keeps them and asks whether they changed.</summary>
internal static class AssetRoutes
{
    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".ttf"] = "font/ttf",
        [".html"] = "text/html; charset=utf-8",
        [".webmanifest"] = "application/manifest+json",
    };

    private static readonly Dictionary<string, string> Fonts = new(StringComparer.Ordinal)
    {
        ["lato-regular.ttf"] = "Jumpwright.Paper.Fonts.Lato-Regular.ttf",
        ["lato-bold.ttf"] = "Jumpwright.Paper.Fonts.Lato-Bold.ttf",
    };

    private static readonly ConcurrentDictionary<string, (byte[] Bytes, string Tag)?> Read = new(
        StringComparer.Ordinal
    );

    public static void Map(WebApplication app) =>
        app.MapGet("/assets/{name}", (string name, HttpContext context) => Of(context, name));

    /// <summary>One asset by its name.</summary>
    public static IResult Of(HttpContext context, string name)
    {
        if (
            !Types.TryGetValue(Path.GetExtension(name), out string? type)
            || Read.GetOrAdd(name, Find) is not var (bytes, tag)
        )
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = "no-cache";
        return Results.Bytes(bytes, type, entityTag: new Microsoft.Net.Http.Headers.EntityTagHeaderValue(tag));
    }

    private static (byte[] Bytes, string Tag)? Find(string name)
    {
        Stream? stream = Fonts.TryGetValue(name, out string? font)
            ? typeof(CardPdf).Assembly.GetManifestResourceStream(font)
            : typeof(AssetRoutes).Assembly.GetManifestResourceStream("assets/" + name);
        if (stream is null)
        {
            return null;
        }

        using (stream)
        {
            using var all = new MemoryStream();
            stream.CopyTo(all);
            byte[] bytes = all.ToArray();
            return (bytes, $"\"{Convert.ToHexStringLower(SHA256.HashData(bytes))[..32]}\"");
        }
    }
}
