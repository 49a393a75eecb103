using Jumpwright.Paper.Plotting;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using PdfSharp.Drawing;

namespace Jumpwright.Paper.Layout;

/// <summary>Turns a card's words into rows.</summary>
internal sealed class CardLayout(
    SessionCard card,
    CardPictures pictures,
    CardStyles styles,
    double width,
    PaperWords words
)
{
    /// <summary>The margin column left of the margin line, where numbers stand.</summary>
    private const double Margin = 26;

    private double BodyWidth => width - Margin;

    private string When => words.Say($"{card.Date:dddd d MMMM uuuu}, {card.Start:HH:mm}.");

    public string Title => words.Say($"Session card, {card.AthleteName}, {card.Date:dddd d MMMM uuuu}");

    private string Valid => words.Say($"Valid on this day only.");

    /// <summary>The name as printed; with the id where the font has no letters for the name.</summary>
    private string Name =>
        Fonts.PaperFonts.CanDraw(card.AthleteName) ? card.AthleteName : $"{card.AthleteName} ({card.AthleteId})";

    public IReadOnlyList<Row> FirstHead() =>
        [
            Rows.Rule(Ink.StrongRule, width, 1.3, 5),
            .. Rows.Text(0, width, new Run(Name, styles.Athlete)),
            .. Rows.Text(0, width, new Run(When, styles.Day), new Run(Valid, styles.Lead)),
            .. Rows.Text(0, width, new Run(words.Say(card.Headline), styles.Lead)),
            Rows.Rule(Ink.BlackLine, width, 3, 3),
        ];

    public IReadOnlyList<Row> FurtherHead() =>
        [
            Rows.Rule(Ink.StrongRule, width, 1.3, 4),
            .. Rows.Text(0, width, new Run(Name + ".", styles.Day), new Run(When + " " + Valid, styles.Body)),
            Rows.Rule(Ink.BlackLine, width, 2, 3),
        ];

    public IReadOnlyList<Row> Foot(int page, int pages)
    {
        IReadOnlyList<IReadOnlyList<Piece>> lines = Wrapping.Lines(
            [new Run(words.Say(card.MadeBy), styles.Foot)],
            width - 60
        );
        IReadOnlyList<Piece> made = lines.Count > 0 ? lines[0] : [];
        string count = words.Say($"Page {page} of {pages}");
        return
        [
            Row.Gap(4),
            new Row(
                styles.Foot.LineHeight,
                (g, x, y) =>
                {
                    foreach (Piece piece in made)
                    {
                        piece.Style.Draw(g, piece.Text, x + piece.X, y + styles.Foot.Ascent);
                    }

                    styles.Foot.Draw(g, count, x + width - styles.Foot.Width(count), y + styles.Foot.Ascent);
                }
            ),
        ];
    }

    public IEnumerable<Block> Blocks()
    {
        if (card.NothingPlanned is { } reason)
        {
            yield return Margined([
                .. Rows.Text(
                    Margin,
                    BodyWidth,
                    new Run(words.Say($"No jumps are planned for you in this session."), styles.Exercise)
                ),
                Row.Gap(3),
                .. Rows.Text(Margin, BodyWidth, new Run(words.Say(reason), styles.Lead)),
                Row.Gap(6),
            ]);
        }

        if (card.Questions.Length > 0)
        {
            yield return new Block([
                .. Rows.Text(0, width, new Run(words.Say($"Before you start: three questions"), styles.Section)),
                Row.Gap(2),
            ]);
            for (int i = 0; i < card.Questions.Length; i++)
            {
                yield return Question((char)('a' + i), card.Questions[i]);
            }
        }

        for (int i = 0; i < card.Items.Length; i++)
        {
            yield return Item(i + 1, card.Items[i]);
        }

        if (card.Items.Length > 0)
        {
            yield return new Block([
                Rows.Rule(Ink.BlackLine, width, 1, 2),
                .. Rows.Text(
                    0,
                    width,
                    new Run(words.Say($"Total ground contacts:"), styles.Body),
                    new Run(card.TotalContacts.ToString(), styles.Dose)
                ),
                Row.Gap(3),
            ]);
        }

        yield return Closing();
        foreach (Picture picture in new[] { pictures.LastJump, pictures.Trend }.OfType<Picture>())
        {
            yield return PictureBlock(picture);
        }
    }

    /// <summary>The question and its blanks at the left, what each answer does at the right.</summary>
    private Block Question(char letter, CardQuestion question)
    {
        double left = BodyWidth * 0.34;
        double right = BodyWidth - left - 8;
        var asked = Rows.Text(Margin, left, new Run(words.Say(question.Question), styles.Strong)).ToList();
        asked[0] = Numbered(asked[0], letter.ToString(), styles.Dose, styles.Strong.Ascent);
        asked.AddRange(question.Blanks.Select(label => Blank(words.Say(label), left)));
        Row[] answers =
        [
            .. question.Answers.SelectMany(answer =>
                Rows.Text(
                    Margin + left + 8,
                    right,
                    new Run(words.Say(answer.Answer) + ":", styles.Strong),
                    new Run(words.Say(answer.Then), styles.Body)
                )
            ),
        ];
        return Margined([Rows.Beside(asked, answers), Rows.Rule(Ink.ThinRule, width, 2, 3)]);
    }

    /// <summary>A blank to write in: a label and a line.</summary>
    private Row Blank(string label, double length) =>
        new(
            18,
            (g, x, y) =>
            {
                styles.Body.Draw(g, label, x + Margin, y + 14);
                g.DrawLine(
                    Ink.BlackLine,
                    x + Margin + styles.Body.Width(label) + 4,
                    y + 15.5,
                    x + Margin + length,
                    y + 15.5
                );
            }
        );

    private Block Item(int number, CardItem item)
    {
        const double Side = 13;
        const double Between = 5;
        int perRow = Math.Clamp(item.Sets, 1, 6);
        double boxes = (perRow * (Side + Between)) - Between;
        double textWidth = BodyWidth - boxes - 8;
        string dose = words.Say(
            item.HeightOrLoad is { } height ? Sentence.Of($"{item.Dose}, {height}.") : Sentence.Of($"{item.Dose}.")
        );
        var head = new List<Row>();
        head.AddRange(Rows.Text(Margin, textWidth, new Run(item.Name, styles.Exercise)));
        head[0] = Numbered(head[0], number.ToString(), styles.Number, styles.Exercise.Ascent);
        head.AddRange(
            Rows.Text(
                Margin,
                textWidth,
                new Run(dose, styles.Dose),
                // The space tells it from "rest", which is no pause.
                new Run(words.Say($"Rest "), styles.Strong),
                new Run(words.Say(item.Rest), styles.Body)
            )
        );
        Row[] ticks =
        [
            .. Enumerable
                .Range(0, (item.Sets + perRow - 1) / perRow)
                .Select(r => Ticks(Math.Min(perRow, item.Sets - (r * perRow)), width - boxes, Side, Between)),
        ];
        var rows = new List<Row> { Row.Gap(1), Rows.Beside(head, ticks) };
        rows.AddRange(Named(($"Why", words.Say(item.Why))));
        // How it is begun and done, and when it ends and what comes in its place, are read together; a line of their own each has no room.
        rows.AddRange(Named(($"Set up", item.SetUp), ($"Think", item.Cue)));
        rows.AddRange(
            Named(
                ($"Stop when", $"{words.Say(item.StopWhen)} {item.OwnStop}".TrimEnd()),
                ($"Instead", words.Say(item.InsteadIfSore))
            )
        );
        rows.Add(Rows.Rule(Ink.ThinRule, width, 3, 1));
        return Margined(rows);
    }

    /// <summary>What words are about, and what they say, one after the other.</summary>
    private IEnumerable<Row> Named(params (Sentence Name, string Says)[] parts) =>
        Rows.Text(
            Margin,
            BodyWidth,
            [
                .. parts.SelectMany(p =>
                    new[] { new Run(words.Say(p.Name), styles.Strong), new Run(p.Says, styles.Body) }
                ),
            ]
        );

    /// <summary>A row of boxes to tick, one a set.</summary>
    private static Row Ticks(int count, double left, double side, double between) =>
        new(
            side + between,
            (g, x, y) =>
            {
                for (int i = 0; i < count; i++)
                {
                    g.DrawRectangle(Ink.Box, x + left + (i * (side + between)) - 0.6, y + 1.5, side, side);
                }
            }
        );

    private Block Closing()
    {
        var rows = new List<Row>();
        if (card.LandingLines.Length > 0)
        {
            rows.AddRange(
                Rows.Text(
                    0,
                    width,
                    [
                        new Run(words.Say($"Landing, every time:"), styles.Section),
                        .. card.LandingLines.Select(line => new Run(words.Say(line), styles.Body)),
                    ]
                )
            );
            rows.Add(Row.Gap(3));
        }

        rows.AddRange(Rows.Text(0, width, new Run(words.Say(card.StopAtOnce), styles.Strong)));
        rows.Add(Row.Gap(3));
        rows.AddRange(Rows.Text(0, width, new Run(words.Say(card.Caution), styles.Small)));
        return new Block(rows);
    }

    /// <summary>
    /// A picture no larger than its own type asks for (9 pt, as the words'), so that the card's words win; its words beside it where the sheet
    /// has room for both, else under it.
    /// </summary>
    private Block PictureBlock(Picture picture)
    {
        const double Gutter = 12;
        byte[] printed = picture.Printed;
        using var probe = XImage.FromStream(new MemoryStream(printed));
        double drawn = Math.Min(width, PlotSheet.WidthPt(styles.Small.Font.Size));
        double height = drawn * probe.PixelHeight / probe.PixelWidth;
        double beside = width - drawn - Gutter;
        var image = new Row(
            height,
            (g, x, y) =>
            {
                using var image = XImage.FromStream(new MemoryStream(printed));
                g.DrawImage(image, x, y, drawn, height);
            }
        );
        var caption = new Run(picture.Caption, styles.Small);
        return beside < drawn / 2
            ? new Block([Row.Gap(6), image, .. Rows.Text(0, width, caption)])
            : new Block([
                Row.Gap(6),
                Rows.Beside([image], [Row.Gap(height / 8), .. Rows.Text(drawn + Gutter, beside, caption)]),
            ]);
    }

    private static Row Numbered(Row row, string number, TextStyle style, double ascent) =>
        row.Over((g, x, y) => style.Draw(g, number, x + 2, y + ascent));

    /// <summary>Rows with the margin line at their left, as on ruled paper.</summary>
    private static Block Margined(IReadOnlyList<Row> rows) =>
        new([
            .. rows.Select(r =>
                r.Over((g, x, y) => g.DrawLine(Ink.MarginLine, x + Margin - 6, y, x + Margin - 6, y + r.Height))
            ),
        ]);
}
