using Jumpwright.Sessions;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Paper.Layout;

/// <summary>Turns a coach's sheet into rows: stations on ruled lines of time, who does what, and what to watch.</summary>
internal sealed class SheetLayout(CoachSheet sheet, double width)
{
    private const double ContactsColumn = 52;
    private const double WriteColumn = 135;
    private const double NameColumn = 140;
    private const double Gutter = 10;

    private static readonly LocalDatePattern DayInWords = LocalDatePattern.CreateWithInvariantCulture(
        "dddd d MMMM uuuu"
    );
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    private readonly TextStyle _title = TextStyle.Of(17, bold: true);
    private readonly TextStyle _day = TextStyle.Of(12, bold: true);
    private readonly TextStyle _section = TextStyle.Of(11, bold: true, Ink.AccentBrush);
    private readonly TextStyle _body = TextStyle.Of(9.5);
    private readonly TextStyle _strong = TextStyle.Of(9.5, bold: true);
    private readonly TextStyle _name = TextStyle.Of(10.5, bold: true);
    private readonly TextStyle _foot = TextStyle.Of(7);

    private string When =>
        $"{DayInWords.Format(sheet.Date)}, {Clock.Format(sheet.Start)} to "
        + Clock.Format(sheet.Start.PlusMinutes(sheet.Minutes));

    public string Title => $"Coach's sheet, {sheet.SquadName}, {DayInWords.Format(sheet.Date)}";

    public IReadOnlyList<Row> FirstHead() =>
        [
            Rows.Rule(Ink.StrongRule, width, 1.3, 4),
            .. Rows.Text(0, width, new Run($"Coach's sheet: {sheet.SquadName}", _title)),
            .. Rows.Text(0, width, new Run(When, _day), new Run("Valid on this day only.", _body)),
            .. Rows.Text(
                0,
                width,
                new Run("Before anybody jumps", _strong),
                new Run("ask each athlete the three questions on their card, and do what the card says.", _body)
            ),
            Rows.Rule(Ink.BlackLine, width, 3, 4),
        ];

    public IReadOnlyList<Row> FurtherHead() =>
        [
            Rows.Rule(Ink.StrongRule, width, 1.3, 4),
            .. Rows.Text(0, width, new Run($"Coach's sheet: {sheet.SquadName}.", _day), new Run(When, _body)),
            Rows.Rule(Ink.BlackLine, width, 3, 4),
        ];

    public IReadOnlyList<Row> Foot(int page, int pages)
    {
        string count = $"Page {page} of {pages}";
        IReadOnlyList<IReadOnlyList<Piece>> made = Wrapping.Lines([new Run(sheet.MadeBy, _foot)], width - 80);
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
            var line = new TimeLine(sheet, width, _body, _strong, _name);
            Row[] head = [.. Rows.Text(0, width, new Run("Where and when", _section)), line.Axis()];
            foreach (Block station in Under(head, line.Stations()))
            {
                yield return station;
            }

            yield return new Block([Row.Gap(8)]);
        }

        Row[] heads = [.. Rows.Text(0, width, new Run("Who does what", _section)), Heads()];
        foreach (Block who in Under(heads, Everybody()))
        {
            yield return who;
        }

        yield return new Block([
            Rows.Rule(Ink.BlackLine, width, 1, 3),
            .. Rows.Text(
                0,
                width,
                new Run("Ground contacts of all athletes:", _body),
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

    /// <summary>Blocks under a head that is never left alone at a page's end.</summary>
    private static IEnumerable<Block> Under(IReadOnlyList<Row> head, IEnumerable<Block> blocks)
    {
        bool first = true;
        foreach (Block block in blocks)
        {
            yield return first ? new Block([.. head, .. block.Rows]) : block;
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
                _strong.Draw(g, "Athlete", x, y + _strong.Ascent);
                _strong.Draw(g, "In this order", x + NameColumn + Gutter, y + _strong.Ascent);
                _strong.Draw(g, "Contacts", x + ContactsLeft, y + _strong.Ascent);
                _strong.Draw(g, "Done, pain, what you saw", x + width - WriteColumn, y + _strong.Ascent);
                g.DrawLine(Ink.BlackLine, x, y + _strong.LineHeight + 2, x + width, y + _strong.LineHeight + 2);
            }
        );

    private Block Who(CoachLine line, int? note)
    {
        List<Row> name = [.. Rows.Text(0, NameColumn, new Run(line.AthleteName, _name))];
        if (note is { } number)
        {
            name.AddRange(Rows.Text(0, NameColumn, new Run($"see note {number}", _body)));
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
                            new Run(i < line.Items.Length - 1 ? item + "." : item, _body),
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
                .. Rows.Text(0, width, new Run("What to watch", _section)),
                .. Rows.Text(0, width, new Run("For the coach only: keep this page, don't hang it up.", _strong)),
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
                        .. Rows.Text(NameColumn + Gutter, width - NameColumn - Gutter, new Run(watch, _body)),
                    ];
                    yield return new Block([Rows.Beside(who, what), Rows.Rule(Ink.ThinRule, width, 2.5, 3)]);
                }
            }
        }

        yield return new Block([
            Row.Gap(4),
            .. sheet.Notes.SelectMany(note => Rows.Text(0, width, new Run(note, _body)).Append(Row.Gap(2))),
        ]);
    }
}
