using Jumpwright.App.Settings;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>In which language and units a page is written: set once a request, and read by whatever writes words in it.</summary>
/// <param name="Language"><c>en</c> or <c>de</c>.</param>
/// <param name="Units">Lengths and masses.</param>
internal sealed record Speech(string Language, UnitSystem Units)
{
    /// <summary>What is spoken where nobody asked: commands, tests, files.</summary>
    public static readonly Speech Standard = new("en", UnitSystem.Metric);

    private static readonly AsyncLocal<Speech?> Current = new();

    public static Speech Now => Current.Value ?? Standard;

    /// <summary>The exercises that its sentences may name by id: what ships, and a squad's own with it.</summary>
    public Catalogue Catalogue { get; init; } = Catalogue.Standard;

    /// <summary>As the settings have it; this language where they leave it to whoever asks.</summary>
    public Speech As(HouseSettings settings) =>
        this with
        {
            Language = settings.Language ?? Language,
            Units = settings.Units,
        };

    /// <summary>Holds for the rest of the request that calls it.</summary>
    public static void Use(Speech speech) => Current.Value = speech;
}
