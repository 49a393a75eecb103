using Jumpwright.Athletes;

namespace Jumpwright.App.Desk.Journals;

/// <summary>Sides as the journal writes them.</summary>
internal static class Sides
{
    /// <summary>Unknown where nobody said it.</summary>
    public static Side Read(string? written) =>
        written switch
        {
            "left" => Side.Left,
            "right" => Side.Right,
            "both" => Side.Both,
            _ => Side.Unknown,
        };

    /// <summary>Null where nobody said it.</summary>
    public static string? Word(Side side) =>
        side switch
        {
            Side.Left => "left",
            Side.Right => "right",
            Side.Both => "both",
            _ => null,
        };
}
