using Jumpwright.App.Desk;
using Jumpwright.App.Kit;

namespace Jumpwright.App.Pages.Routes;

/// <summary>The kit desk: a set-up stands in the address, so that it can be kept and come back to.</summary>
internal static class KitRoutes
{
    private const int Longest = 600;

    public static void Map(WebApplication app, FrontDesk desk) =>
        app.MapGet(
            "/kit",
            (HttpRequest request) =>
            {
                KitTool tool = KitDesk.Tools.FirstOrDefault(t => t.Id == request.Query["tool"]) ?? KitDesk.Tools[0];
                Func<string, string?> typed = name =>
                    request.Query.TryGetValue(name, out var value)
                        ? value.ToString() is { Length: <= Longest } text
                            ? text
                            : ""
                        : null;
                return Answers.Page<KitPage>(
                    new
                    {
                        desk.Book,
                        Tool = tool,
                        Typed = typed,
                    }
                );
            }
        );
}
