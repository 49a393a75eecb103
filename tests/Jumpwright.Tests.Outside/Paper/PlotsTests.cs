using System.Text;
using System.Xml.Linq;
using Jumpwright.Paper;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Tests.Outside.Paper;

/// <summary>Pictures: words for the phases, dashes for the legs, safe to stand inside a page, the same bytes every time.</summary>
public class PlotsTests
{
    private const string Title = "Jump <script>alert(1)</script> & \"5 < 6\"";

    /// <summary>A drawn curve; nothing is measured from it.</summary>
    private static MotionTrace Trace(bool twoPlates = true, double weight = 700)
    {
        double[] time = [.. Enumerable.Range(0, 2401).Select(i => i / 1000.0)];
        double[] force =
        [
            .. time.Select(t =>
                t < 0.6 ? weight
                : t < 1.3 ? weight + (600 * Math.Sin((t - 0.6) * 9))
                : t < 1.8 ? 0
                : weight + (900 * Math.Exp(-8 * (t - 1.8)))
            ),
        ];
        return new MotionTrace(
            [.. time],
            [.. force],
            twoPlates ? [.. force.Select(f => 0.52 * f)] : [],
            twoPlates ? [.. force.Select(f => 0.48 * f)] : [],
            [],
            [],
            weight,
            [
                new Phase(Tracing.Weighing, 0, 0.6),
                new Phase(Tracing.Unweighting, 0.6, 0.9),
                new Phase(Tracing.Braking, 0.9, 1.1),
                new Phase(Tracing.Propulsion, 1.1, 1.3),
                new Phase(Tracing.Flight, 1.3, 1.8),
                new Phase(Tracing.Landing, 1.8, 2.4),
            ]
        );
    }

    private static readonly TrendPoint[] Values =
    [
        new(new LocalDate(2027, 1, 4), 39.4, 0.5),
        new(new LocalDate(2026, 11, 2), 36.1, 0.6),
        new(new LocalDate(2026, 11, 30), 38.2, 0.6),
    ];

    private static string[] Texts(string svg) =>
        [.. XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];

    [Theory]
    [InlineData("weighing")]
    [InlineData("unweighting")]
    [InlineData("braking")]
    [InlineData("propulsion")]
    [InlineData("flight")]
    [InlineData("landing")]
    [InlineData("take-off")]
    [InlineData("touch-down")]
    public void Trace_Drawn_NamesPhasesAndMarksInWords(string word) =>
        Assert.Single(Texts(Plots.TraceSvg(Trace(), "Jump")), word);

    [Fact]
    public void Trace_OfTwoPlates_TellsTheLegsApartByDashesAndSaysSo()
    {
        string svg = Plots.TraceSvg(Trace(), "Jump");
        Assert.Contains(
            Texts(svg),
            t =>
                t.Contains("dashes: left", StringComparison.Ordinal)
                && t.Contains("dots: right", StringComparison.Ordinal)
        );
        string one = Plots.TraceSvg(Trace(twoPlates: false), "Jump");
        Assert.DoesNotContain(Texts(one), t => t.Contains("left", StringComparison.Ordinal));
        Assert.Contains(Texts(one), t => t.Contains("body weight", StringComparison.Ordinal));
    }

    /// <summary>Left and right are told apart without colour: by their dashes, and by their names at the curves' ends, the higher leg's above.</summary>
    [Fact]
    public void LegsOfTwoPlates_HaveDashesOfTheirOwn_AndTheirNames()
    {
        MotionTrace trace = Trace();
        Assert.NotEmpty(trace.LeftN);
        string svg = Plots.TraceSvg(trace, "Jump");
        Assert.Contains("left", Texts(svg).Select(t => t.Trim()));
        Assert.Contains("right", Texts(svg).Select(t => t.Trim()));
        // Drawn dash by dash: the left leg's line, in the accent's colour, has fewer and longer pieces than the right's in ink.
        (int left, int right) = (Pieces(svg, "#1F4E8C"), Pieces(svg, "#111"));
        Assert.InRange(left, 10, right / 2);
        Assert.DoesNotContain(
            "left",
            Texts(Plots.TraceSvg(trace with { LeftN = [], RightN = [] }, "Jump")).Select(t => t.Trim())
        );
    }

    /// <summary>Of how many pieces the most broken line of that colour is made.</summary>
    private static int Pieces(string svg, string color) =>
        XDocument
            .Parse(svg)
            .Descendants()
            .Where(e => e.Name.LocalName == "path" && (string?)e.Attribute("fill") == color)
            .Max(e => ((string)e.Attribute("d")!).Count(c => c == 'M'));

    [Fact]
    public void Picture_WithMarkupInItsTitle_OnlyShowsIt()
    {
        string svg = Plots.TraceSvg(Trace(), Title, "Described & <b>so</b>");
        Assert.DoesNotContain("<script", svg, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>", svg, StringComparison.OrdinalIgnoreCase);
        XElement root = XDocument.Parse(svg).Root!;
        Assert.Equal(Title, root.Elements().First(e => e.Name.LocalName == "title").Value);
        Assert.Equal("Described & <b>so</b>", root.Elements().First(e => e.Name.LocalName == "desc").Value);
        Assert.Equal("img", root.Attribute("role")?.Value);
        Assert.Empty(root.DescendantsAndSelf().Attributes("style"));
        Assert.DoesNotContain(root.DescendantsAndSelf(), e => e.Name.LocalName is "script" or "style" or "image");
    }

    [Fact]
    public void Picture_IsDrawnToATenthOfAPixel_SoThatAPageStaysSmall()
    {
        string svg = Plots.TraceSvg(Trace(), "Jump");
        string[] drawn = [.. XDocument.Parse(svg).Descendants().Attributes("d").Select(a => a.Value)];
        Assert.NotEmpty(drawn);
        Assert.All(drawn, d => Assert.DoesNotMatch(@"\.\d\d", d));
        Assert.InRange(svg.Length, 1, 50_000);
    }

    [Fact]
    public void TwoPictures_OnOnePage_ShareNoId()
    {
        string page = $"<div>{Plots.TraceSvg(Trace(), "One")}{Plots.TraceSvg(Trace(), "Two")}{Trend()}</div>";
        string[] ids = [.. XDocument.Parse(page).Descendants().Attributes("id").Select(a => a.Value)];
        Assert.NotEmpty(ids);
        Assert.Distinct(ids);
        Assert.All(
            XDocument.Parse(page).Descendants().Attributes("clip-path").Select(a => a.Value),
            v => Assert.Contains(v[5..^1], ids)
        );
    }

    [Fact]
    public void Picture_DrawnTwice_IsTheSameByteForByte()
    {
        Assert.Equal(Plots.TraceSvg(Trace(), "Jump"), Plots.TraceSvg(Trace(), "Jump"));
        Assert.Equal(Plots.TracePng(Trace(), "Jump"), Plots.TracePng(Trace(), "Jump"));
        Assert.Equal(Trend(), Trend());
        Assert.Equal(Plots.TrendPng(Values, "Height", "cm"), Plots.TrendPng(Values, "Height", "cm"));
        Assert.NotEqual(Plots.TracePng(Trace(), "Jump"), Plots.TracePng(Trace(weight: 710), "Jump"));
    }

    [Fact]
    public void Trend_InAnyOrder_SaysEveryValueInOrderAndWritesTheLastOne()
    {
        string svg = Trend();
        Assert.Equal(
            "2 Nov 2026: 36.1 ± 0.6 cm; 30 Nov 2026: 38.2 ± 0.6 cm; 4 Jan 2027: 39.4 ± 0.5 cm.",
            XDocument.Parse(svg).Root!.Elements().First(e => e.Name.LocalName == "desc").Value
        );
        Assert.Contains("39.4 ± 0.5 cm", Texts(svg));
    }

    /// <summary>Between two values of one day nothing went on: the line joins days, by their means, and never two dots of one.</summary>
    [Fact]
    public void Trend_WithSeveralValuesADay_JoinsTheDaysAndNotTheirDots()
    {
        TrendPoint[] pairs = [.. Values.SelectMany(v => new[] { v, v with { Value = v.Value - 1.5 } })];
        Assert.Equal(Vertices(Plots.TrendSvg(Values, "Height", "cm")), Vertices(Plots.TrendSvg(pairs, "Height", "cm")));
    }

    /// <summary>How many points the trend's line has; it alone is drawn one and a half wide.</summary>
    private static int Vertices(string svg) =>
        XDocument
            .Parse(svg)
            .Descendants()
            .Where(e => e.Name.LocalName == "path" && (string?)e.Attribute("stroke-width") == "1.5")
            .Select(e => ((string)e.Attribute("d")!).Split(['L', 'M'], StringSplitOptions.RemoveEmptyEntries).Length)
            .Single();

    [Fact]
    public void Trend_WithOneValueOrLettersTheFontLacks_IsDrawn()
    {
        Assert.NotEmpty(Plots.TrendPng(Values[..1], "ارتفاع \u202Ex 高さ", "cm"));
        string svg = Plots.TrendSvg(Values[..1], "a\u0000b\u202Ec", "cm");
        Assert.DoesNotContain('\u202E', svg);
        Assert.DoesNotContain('\0', svg);
        Assert.Throws<ArgumentException>(() => Plots.TrendSvg([], "Height", "cm"));
    }

    [Fact]
    public void Trace_WithNothingInIt_IsAnEmptyPictureNotAnError()
    {
        var empty = new MotionTrace([], [], [], [], [], [], null, []);
        Assert.StartsWith("<svg", Plots.TraceSvg(empty, ""), StringComparison.Ordinal);
        byte[] png = Plots.TracePng(empty, "");
        Assert.Equal("PNG", Encoding.ASCII.GetString(png, 1, 3));
    }

    private static string Trend() => Plots.TrendSvg(Values, "Height by impulse, two plates", "cm");

    [Fact]
    public void Pictures_DrawnByManyAtOnce_AreThoseThatOneDraws()
    {
        string alone = Plots.TrendSvg(Values, "Jump height", "cm");
        string trace = Plots.TraceSvg(Trace(), Title);
        string[] drawn = new string[400];
        Parallel.For(
            0,
            drawn.Length,
            new ParallelOptions { MaxDegreeOfParallelism = 16 },
            i => drawn[i] = i % 4 == 0 ? Plots.TraceSvg(Trace(), Title) : Plots.TrendSvg(Values, "Jump height", "cm")
        );
        Assert.All(drawn, (svg, i) => Assert.Equal(i % 4 == 0 ? trace : alone, svg));
    }
}
