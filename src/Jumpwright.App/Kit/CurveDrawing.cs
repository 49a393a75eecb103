using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;

namespace Jumpwright.App.Kit;

/// <summary>Single trials as dots over what was changed, with uprights where something begins or ends.</summary>
internal static class CurveDrawing
{
    private const double Wide = 420;
    private const double High = 280;
    private const double Left = 60;
    private const double Bottom = 44;

    /// <summary>Round numbers from 0 on, at most six, each written as what it is.</summary>
    internal static IEnumerable<double> Ticks(double top)
    {
        double ten = Math.Pow(10, Math.Floor(Math.Log10(top / 5)));
        double each = ten * new[] { 1.0, 2, 5, 10 }.First(m => top / (m * ten) <= 5.000001);
        for (int i = 0; i * each <= top * 1.000001; i++)
        {
            yield return i * each;
        }
    }

    /// <summary>The drawing, its axes in the units of the request.</summary>
    /// <param name="measured">Single trials, in the metric units of the axes.</param>
    /// <param name="across">The axis of what was changed.</param>
    /// <param name="up">The axis of what was measured.</param>
    /// <param name="ends">Where something begins or ends, and its name.</param>
    /// <param name="says">The same in a sentence.</param>
    public static string Svg(
        ImmutableArray<(double X, double Y)> measured,
        Axis across,
        Axis up,
        ImmutableArray<(double At, string Name)> ends,
        string says
    )
    {
        (double X, double Y)[] points = [.. measured.Select(p => (across.Shown(p.X), up.Shown(p.Y)))];
        (double At, string Name)[] uprights = [.. ends.Select(e => (across.Shown(e.At), e.Name))];
        double right = Math.Max(points.Select(p => p.X).Append(0).Max() * 1.1, 1e-6);
        double top = Math.Max(points.Select(p => p.Y).Append(0).Max() * 1.15, 1e-6);
        var body = new StringBuilder();
        void Add(FormattableString s) => body.Append(s.ToString(CultureInfo.InvariantCulture));
        double X(double v) => Left + (v / right * (Wide - Left - 20));
        double Y(double v) => High - Bottom - (v / top * (High - Bottom - 20));

        Add($"<path d=\"M{Left} 10V{High - Bottom}H{Wide - 10}\" stroke=\"currentColor\" fill=\"none\"/>");
        foreach (double at in Ticks(top))
        {
            Add(
                $"<text x=\"{Left - 8}\" y=\"{Y(at) + 5:0}\" text-anchor=\"end\" font-size=\"15\">{Numerals.Write(at, "0.####", Speech.Now.Language)}</text>"
            );
        }

        foreach (double at in Ticks(right))
        {
            Add(
                $"<text x=\"{X(at):0}\" y=\"{High - Bottom + 18}\" text-anchor=\"middle\" font-size=\"15\">{Numerals.Write(at, "0.####", Speech.Now.Language)}</text>"
            );
        }

        Add(
            $"<text x=\"{Wide - 10}\" y=\"{High - 6}\" text-anchor=\"end\" font-size=\"15\">{WebUtility.HtmlEncode(across.Label)}</text>"
        );
        Add($"<text x=\"{Left + 6}\" y=\"20\" font-size=\"15\">{WebUtility.HtmlEncode(up.Label)}</text>");
        foreach ((double x, double y) in points)
        {
            Add($"<circle cx=\"{X(x):0.#}\" cy=\"{Y(y):0.#}\" r=\"4.5\" fill=\"currentColor\"/>");
        }

        foreach ((double at, string name) in uprights)
        {
            Add($"<path d=\"M{X(at):0.#} 24V{High - Bottom}\" stroke=\"currentColor\" stroke-dasharray=\"6 4\"/>");
            Add($"<text x=\"{X(at) + 4:0.#}\" y=\"36\" font-size=\"15\">{WebUtility.HtmlEncode(name)}</text>");
        }

        return $"<svg class=\"small\" viewBox=\"0 0 {Wide:0} {High:0}\" role=\"img\" aria-label=\"{WebUtility.HtmlEncode(says)}\">{body}</svg>";
    }
}
