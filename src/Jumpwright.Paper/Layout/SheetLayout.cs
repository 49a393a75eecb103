using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.Paper.Layout;

/// <summary>Turns a coach's sheet into rows: stations on ruled lines of time, who does what, and what to watch.</summary>
internal sealed class SheetLayout(CoachSheet sheet, double width, PaperWords words)
{
    private const double ContactsColumn = 52;
    private const double WriteColumn = 135;
    private const double NameColumn = 140;
    private const double Gutter = 10;

    private readonly TextStyle _title = TextStyle.Of(17, bold: true);
    private readonly TextStyle _day = TextStyle.Of(12, bold: true);
    private readonly TextStyle _section = TextStyle.Of(11, bold: true, Ink.AccentBrush);
    private readonly TextStyle _body = TextStyle.Of(9.5);
    private readonly TextStyle _strong = TextStyle.Of(9.5, bold: true);
    private readonly TextStyle _name = TextStyle.Of(10.5, bold: true);
    private readonly TextStyle _foot = TextStyle.Of(7);

    private string When =>
        words.Say(
            $"{sheet.Date:dddd d MMMM uuuu}, {sheet.Start:HH:mm} to {sheet.Start.PlusMinutes(sheet.Minutes):HH:mm}"
        );

    private string Head => words.Say($"Coach's sheet: {sheet.SquadName}");

    public string Title => words.Say($"Coach's sheet, {sheet.SquadName}, {sheet.Date:dddd d MMMM uuuu}");

    public IReadOnlyList<Row> FirstHead() =>
        [
            Rows.Rule(Ink.StrongRule, width, 1.3, 4),
            .. Rows.Text(0, width, new Run(Head, _title)),
            .. Rows.Text(0, width, new Run(When, _day), new Run(words.Say($"Valid on this day only."), _body)),
            .. Rows.Text(
                0,
                width,
                new Run(words.Say($"Before anybody jumps"), _strong),
                new Run(
                    words.Say($"ask each athlete the three questions on their card, and do what the card says."),
                    _body
                )
            ),
            Rows.Rule(Ink.BlackLine, width, 3, 4),
        ];

    public IReadOnlyList<Row> FurtherHead() =>
        [
            Rows.Rule(Ink.StrongRule, width, 1.3, 4),
            .. Rows.Text(0, width, new Run(Head + ".", _day), new Run(When, _body)),
            Rows.Rule(Ink.BlackLine, width, 3, 4),
        ];

    public IReadOnlyList<Row> Foot(int page, int pages)
    {
        string count = words.Say($"Page {page} of {pages}");
        IReadOnlyList<IReadOnlyList<Piece>> made = Wrapping.Lines(
            [new Run(words.Say(sheet.MadeBy), _foot)],
            width - 80
        );
        return
        [
            Row.Gap(3),
            new Row(
                _foot.LineHeight,
                (g, x, y) =>
                {
                    foreach (Piece piece in made.Take(1).SelectMany(line => line))
                    {
                        piece.Style.Draw(g, piece.Text, x + piece.X, y + _foot.Ascent);
                    }

                    _foot.Draw(g, count, x + width - _foot.Width(count), y + _foot.Ascent);
                }
            ),
        ];
    }

    public IEnumerable<Block> Blocks()
    {
        if (sheet.Stations.Length > 0)
        {
            var line = new TimeLine(sheet, width, _body, _strong, _name, words);
            Row axis = line.Axis();
            Row[] head =
            [
                .. Rows.Text(0, width, new Run(words.Say($"Where and when"), _section)),
                .. sheet.Between is { } between ? Rows.Text(0, width, new Run(words.Say(between), _body)) : [],
                axis,
            ];
            foreach (Block station in Under(head, axis, line.Stations()))
            {
                yield return station;
            }

            yield return new Block([Row.Gap(8)]);
        }

        Row columns = Heads();
        Row[] heads = [.. Rows.Text(0, width, new Run(words.Say($"Who does what"), _section)), columns];
        foreach (Block who in Under(heads, columns, Everybody()))
        {
            yield return who;
        }

        yield return new Block([
            Rows.Rule(Ink.BlackLine, width, 1, 3),
            .. Rows.Text(
                0,
                width,
                new Run(words.Say($"Ground contacts of all athletes:"), _body),
                new Run(sheet.Lines.Sum(l => l.Contacts).ToString(), _name)
            ),
        ]);
        foreach (Block block in Watch())
        {
            yield return block;
        }
    }

    private IEnumerable<Block> Everybody()
    {
        int note = 0;
        foreach (CoachLine line in sheet.Lines)
        {
            yield return Who(line, line.Watch is null ? null : ++note);
        }
    }

    /// <summary>Blocks under a head that is never left alone at a page's end, and whose columns are named again on every page.</summary>
    private static IEnumerable<Block> Under(IReadOnlyList<Row> head, Row columns, IEnumerable<Block> blocks)
    {
        bool first = true;
        foreach (Block block in blocks)
        {
            yield return block with
            {
                Rows = first ? [.. head, .. block.Rows] : block.Rows,
                Head = first ? [] : [columns],
                HeadWithin = [columns, .. block.HeadWithin],
            };
            first = false;
        }
    }

    private double ItemsColumn => width - NameColumn - ContactsColumn - WriteColumn - (3 * Gutter);

    private double ContactsLeft => NameColumn + Gutter + ItemsColumn + Gutter;

    private Row Heads() =>
        new(
            _strong.LineHeight + 5,
            (g, x, y) =>
            {
                _strong.Draw(g, words.Say($"Athlete"), x, y + _strong.Ascent);
                _strong.Draw(g, words.Say($"In this order"), x + NameColumn + Gutter, y + _strong.Ascent);
                _strong.Draw(g, words.Say($"Contacts "), x + ContactsLeft, y + _strong.Ascent);
                _strong.Draw(g, words.Say($"Done, pain, what you saw"), x + width - WriteColumn, y + _strong.Ascent);
                g.DrawLine(Ink.BlackLine, x, y + _strong.LineHeight + 2, x + width, y + _strong.LineHeight + 2);
            }
        );

    private Block Who(CoachLine line, int? note)
    {
        List<Row> name = [.. Rows.Text(0, NameColumn, new Run(line.AthleteName, _name))];
        if (note is { } number)
        {
            name.AddRange(Rows.Text(0, NameColumn, new Run(words.Say($"see note {number}"), _body)));
        }

        Row[] items =
        [
            .. Rows.Text(
                NameColumn + Gutter,
                ItemsColumn,
                line.Items.SelectMany(
                    (item, i) =>
                        new[]
                        {
                            new Run(line.Items.Length > 1 ? $"{i + 1}" : "", _strong),
                            new Run(words.Say(item) + (i < line.Items.Length - 1 ? "." : ""), _body),
                        }
                )
            ),
        ];
        Row[] contacts = [.. Rows.Text(ContactsLeft, ContactsColumn, new Run(line.Contacts.ToString(), _name))];
        return new Block([Rows.Beside([Rows.Beside(name, items)], contacts), Rows.Rule(Ink.ThinRule, width, 2.5, 3)]);
    }

    /// <summary>Notes on people begin a page that does not hang on the wall.</summary>
    private IEnumerable<Block> Watch()
    {
        if (sheet.Lines.Any(l => l.Watch is not null))
        {
            yield return new Block([
                .. Rows.Text(0, width, new Run(words.Say($"What to watch"), _section)),
                .. Rows.Text(
                    0,
                    width,
                    new Run(words.Say($"For the coach only: keep this page, don't hang it up."), _strong)
                ),
                Row.Gap(4),
            ])
            {
                OnNewPage = true,
            };
            int note = 0;
            foreach (CoachLine line in sheet.Lines)
            {
                if (line.Watch is { } watch)
                {
                    Row[] who =
                    [
                        .. Rows.Text(0, NameColumn, new Run($"{++note}", _name), new Run(line.AthleteName, _name)),
                    ];
                    Row[] what =
                    [
                        .. Rows.Text(
                            NameColumn + Gutter,
                            width - NameColumn - Gutter,
                            new Run(words.Say(watch), _body)
                        ),
                    ];
                    yield return new Block([Rows.Beside(who, what), Rows.Rule(Ink.ThinRule, width, 2.5, 3)]);
                }
            }
        }

        yield return new Block([
            Row.Gap(4),
            .. sheet.Notes.SelectMany(note => Rows.Text(0, width, new Run(words.Say(note), _body)).Append(Row.Gap(2))),
        ]);
    }
}
