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

    /// <summary>An asset as text.</summary>
    public static string? Text(string name) =>
        Read.GetOrAdd(name, Find) is var (bytes, _) ? System.Text.Encoding.UTF8.GetString(bytes) : null;

    /// <summary>A name that changes with any of these assets.</summary>
    public static string Version(IEnumerable<string> names)
    {
        string all = string.Concat(names.Select(n => Read.GetOrAdd(n, Find) is var (_, tag) ? tag : n));
        return Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(all)))[..16];
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
