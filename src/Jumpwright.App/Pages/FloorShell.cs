using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using Jumpwright.App.Pages.Routes;
using Jumpwright.App.Wording;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Pages;

/// <summary>
/// The floor view's own files in the language of the request: page and manifest with their gaps filled from the text book, the
/// script's words, and the worker, whose version is another one in another language, so that a tablet keeps one language at a time.
/// </summary>
internal static partial class FloorShell
{
    private const string Script = "text/javascript; charset=utf-8";

    /// <summary>What the script says stands under these keys.</summary>
    private const string Prefix = "floor.";

    /// <summary>What the worker keeps besides the page and the words.</summary>
    private static readonly string[] Kept =
    [
        "floor.js",
        "floor-rule.js",
        "floor-worker.js",
        "site.css",
        "icon.svg",
        "lato-regular.ttf",
        "lato-bold.ttf",
    ];

    private static readonly ConcurrentDictionary<(string Language, string Name), byte[]> Made = new();

    /// <summary>One of the files: the page, its manifest, <c>words.js</c>, or the worker.</summary>
    public static IResult Of(HttpContext context, string name)
    {
        byte[] bytes = Bytes(name);
        context.Response.Headers.CacheControl = "no-cache";
        context.Response.Headers.Vary = "Accept-Language";
        return Results.Bytes(
            bytes,
            Path.GetExtension(name) switch
            {
                ".html" => "text/html; charset=utf-8",
                ".webmanifest" => "application/manifest+json",
                _ => Script,
            },
            entityTag: new Microsoft.Net.Http.Headers.EntityTagHeaderValue($"\"{Hash(bytes)}\"")
        );
    }

    private static byte[] Bytes(string name) =>
        Made.GetOrAdd((Speech.Now.Language, name), static asked => Encoding.UTF8.GetBytes(Text(asked.Name)));

    private static string Text(string name) =>
        name switch
        {
            "floor.html" => Filled(name, HtmlEncoder.Default),
            "floor.webmanifest" => Filled(name, JavaScriptEncoder.Default),
            "words.js" => $"\"use strict\";\nconst floorWords = {Words()};\n",
            _ => AssetRoutes.Text(name)!.Replace("{version}", Version(), StringComparison.Ordinal),
        };

    private static string Words() =>
        JsonSerializer.Serialize(
            Keys(Languages[0])
                .Where(k => k.StartsWith(Prefix, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .ToDictionary(k => k[Prefix.Length..], k => T[k], StringComparer.Ordinal)
        );

    private static string Version() =>
        Hash([
            .. Encoding.UTF8.GetBytes(AssetRoutes.Version(Kept)),
            .. Bytes("floor.html"),
            .. Bytes("floor.webmanifest"),
            .. Bytes("words.js"),
        ]);

    private static string Filled(string name, TextEncoder encoder) =>
        Gap()
            .Replace(
                AssetRoutes.Text(name)!,
                gap => gap.Groups[1].Value is "language" ? Speech.Now.Language : encoder.Encode(T[gap.Groups[1].Value])
            );

    private static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes))[..16];

    [GeneratedRegex(@"\{([a-z][a-z.\-]*)\}")]
    private static partial Regex Gap();
}
