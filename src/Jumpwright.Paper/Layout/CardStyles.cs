namespace Jumpwright.Paper.Layout;

/// <summary>The card's type: nothing to be read on the gym floor is under 9 pt, names of exercises are 13 pt bold.</summary>
internal sealed class CardStyles
{
    public TextStyle Athlete { get; } = TextStyle.Of(19, bold: true);
    public TextStyle Day { get; } = TextStyle.Of(12, bold: true);
    public TextStyle Section { get; } = TextStyle.Of(10.5, bold: true, Ink.AccentBrush);
    public TextStyle Number { get; } = TextStyle.Of(17, bold: true, Ink.AccentBrush);
    public TextStyle Exercise { get; } = TextStyle.Of(13, bold: true);
    public TextStyle Dose { get; } = TextStyle.Of(12, bold: true);
    public TextStyle Lead { get; } = TextStyle.Of(10);
    public TextStyle Body { get; } = TextStyle.Of(9);
    public TextStyle Strong { get; } = TextStyle.Of(9, bold: true);
    public TextStyle Small { get; } = TextStyle.Of(9);
    public TextStyle Foot { get; } = TextStyle.Of(7);
}
