using Jumpwright.App.Desk;
using Jumpwright.App.Kit;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;

namespace Jumpwright.App.Pages.Routes;

/// <summary>The kit desk: a set-up stands in the address, so that it can be kept and come back to.</summary>
internal static class KitRoutes
{
    private const int Longest = 600;

    /// <summary>An address keeps the units it was typed in: one that says none was, or holds no set-up yet.</summary>
    private static UnitSystem UnitsOf(IQueryCollection query) =>
        query.TryGetValue(TypedAmount.Field, out var said) ? TypedAmount.UnitsOf(said)
        : query.Keys.All(k => k == "tool") ? Speech.Now.Units
        : UnitSystem.Metric;

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
                        TypedIn = UnitsOf(request.Query),
                    }
                );
            }
        );
}
