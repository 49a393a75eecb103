namespace Jumpwright.Tests.House;

/// <summary>The rooms of the core in the order of the flow. A room uses rooms above it, never below: this list is the law.</summary>
public static class Rooms
{
    public static readonly IReadOnlyList<string> InOrder =
    [
        "Quantities",
        "Statistics",
        "Mechanics",
        "Calculators",
        "Recordings",
        "Trials",
        "Athletes",
        "Safety",
        "Exercises",
        "Progression",
        "Dosing",
        "Prescribing",
        "Plans",
        "Sessions",
    ];

    /// <summary>Uses that go against the order and are allowed for now. This list may only shrink.</summary>
    public static readonly IReadOnlyList<(string From, string To)> Exceptions = [];
}
