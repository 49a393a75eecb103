using PdfSharp.Drawing;

namespace Jumpwright.Paper.Layout;

/// <summary>Rows of text, lines and boxes.</summary>
internal static class Rows
{
    /// <summary>One row for each line of wrapped text.</summary>
    public static IEnumerable<Row> Text(double indent, double width, params IEnumerable<Run> runs)
    {
        foreach (IReadOnlyList<Piece> line in Wrapping.Lines(runs, width))
        {
            yield return Line(line, indent);
        }
    }

    /// <summary>One line of text.</summary>
    public static Row Line(IReadOnlyList<Piece> line, double indent)
    {
        double height = line.Max(p => p.Style.LineHeight);
        double ascent = line.Max(p => p.Style.Ascent);
        return new Row(
            height,
            (g, x, y) =>
            {
                foreach (Piece piece in line)
                {
                    piece.Style.Draw(g, piece.Text, x + indent + piece.X, y + ascent);
                }
            }
        );
    }

    /// <summary>A line across, with room above and below.</summary>
    public static Row Rule(XPen pen, double width, double above, double below, double indent = 0) =>
        new(above + below, (g, x, y) => g.DrawLine(pen, x + indent, y + above, x + indent + width, y + above));

    /// <summary>Two stacks of rows side by side, as one row as high as the higher; each brings its own indent.</summary>
    public static Row Beside(IReadOnlyList<Row> left, IReadOnlyList<Row> right) =>
        new(
            Math.Max(left.Sum(r => r.Height), right.Sum(r => r.Height)),
            (g, x, y) =>
            {
                Stack(g, left, x, y);
                Stack(g, right, x, y);
            }
        );

    /// <summary>Draws rows under each other and says where the last one ends.</summary>
    public static double Stack(XGraphics g, IEnumerable<Row> rows, double x, double y)
    {
        foreach (Row row in rows)
        {
            row.Draw(g, x, y);
            y += row.Height;
        }

        return y;
    }

    /// <summary>The same row with something else drawn behind it.</summary>
    public static Row Over(this Row row, Action<XGraphics, double, double> behind) =>
        row with
        {
            Draw = (g, x, y) =>
            {
                behind(g, x, y);
                row.Draw(g, x, y);
            },
        };
}
