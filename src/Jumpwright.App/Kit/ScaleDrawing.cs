using System.Globalization;
using System.Net;
using System.Text;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;

namespace Jumpwright.App.Kit;

/// <summary>A drawing to scale, metres in, SVG out: a floor, a ruler, boxes, lines, marks with words.</summary>
internal sealed class ScaleDrawing
{
    private const double Side = 76;

    /// <summary>For words at the right, and for what is drawn: small, so that words stay readable on a phone.</summary>
    private const double WordsWide = 170;
    private const double DrawnWide = 200;
    private readonly double _pixels;
    private readonly double _width;
    private readonly double _height;
    private readonly double _left;
    private readonly StringBuilder _body = new();

    /// <summary>An empty drawing with floor and ruler.</summary>
    /// <param name="leftM">What lies left of the middle, m.</param>
    /// <param name="rightM">Right of it.</param>
    /// <param name="heightM">Above the floor.</param>
    public ScaleDrawing(double leftM, double rightM, double heightM)
    {
        _pixels = Math.Clamp(
            Math.Min(420 / Math.Max(heightM + 0.2, 0.5), DrawnWide / Math.Max(leftM + rightM, 0.1)),
            40,
            400
        );
        _left = leftM;
        _width = ((leftM + rightM) * _pixels) + Side + WordsWide;
        _height = ((heightM + 0.2) * _pixels) + 40;
        Line(-leftM, 0, rightM, 0, "3");
        double each = Speech.Now.Units == UnitSystem.InchPound ? Customary.MetresOf(20) : 0.5;
        for (double m = 0; m <= heightM + 0.1; m += each)
        {
            Line(-leftM - (10 / _pixels), m, -leftM, m, "1");
            Words(-leftM - (14 / _pixels), m, SpokenSentences.Text($"{new Length(m):0.0 m}"), "end");
        }
    }

    public ScaleDrawing Line(double x1, double y1, double x2, double y2, string thick = "1.5", string dash = "")
    {
        string dashed = dash.Length > 0 ? $" stroke-dasharray=\"{dash}\"" : "";
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<path d=\"M{X(x1):0.#} {Y(y1):0.#}L{X(x2):0.#} {Y(y2):0.#}\" stroke=\"currentColor\" stroke-width=\"{thick}\"{dashed} fill=\"none\"/>"
        );
        return this;
    }

    public ScaleDrawing Box(double x, double widthM, double heightM, string words)
    {
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<path d=\"M{X(x):0.#} {Y(0):0.#}V{Y(heightM):0.#}H{X(x + widthM):0.#}V{Y(0):0.#}\" stroke=\"currentColor\" stroke-width=\"2\" fill=\"none\"/>"
        );
        return Words(x + (widthM / 2), heightM / 2, words, "middle");
    }

    public ScaleDrawing Mark(double x, double y, string words, double wordsX = double.NaN)
    {
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<circle cx=\"{X(x):0.#}\" cy=\"{Y(y):0.#}\" r=\"5\" fill=\"currentColor\"/>"
        );
        return Words(double.IsNaN(wordsX) ? x + (10 / _pixels) : wordsX, y, words);
    }

    /// <summary>A level with its name at the right.</summary>
    public ScaleDrawing Level(double y, double fromX, double toX, string words) =>
        Line(fromX, y, toX, y, "1.5", "6 4").Words(toX + (6 / _pixels), y, words);

    public ScaleDrawing Words(double x, double y, string words, string anchor = "start")
    {
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{X(x):0.#}\" y=\"{Y(y) + 5:0.#}\" text-anchor=\"{anchor}\" font-size=\"15\" fill=\"currentColor\">{WebUtility.HtmlEncode(words)}</text>"
        );
        return this;
    }

    public string Svg(string says) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"<svg class=\"small\" viewBox=\"0 0 {_width:0} {_height:0}\" role=\"img\" aria-label=\"{WebUtility.HtmlEncode(says)}\">{_body}</svg>"
        );

    private double X(double m) => Side + ((m + _left) * _pixels);

    private double Y(double m) => _height - 30 - (m * _pixels);
}
