using System.Collections.Immutable;

namespace Jumpwright.Athletes;

/// <summary>The squad and its circumstances (squad.yaml).</summary>
/// <param name="Name">Name of the squad.</param>
/// <param name="TimeZone">IANA time zone id.</param>
/// <param name="Kit">Kit and how many.</param>
/// <param name="Windows">Weekly training windows.</param>
/// <param name="Fixtures">Fixtures, from squad.yaml or fixtures.ics.</param>
/// <param name="Policy">Free settings by key, as documented for squad.yaml.</param>
public sealed record Squad(
    string Name,
    string TimeZone,
    ImmutableArray<KitCount> Kit,
    ImmutableArray<TrainingWindow> Windows,
    ImmutableArray<Fixture> Fixtures,
    ImmutableDictionary<string, string> Policy
)
{
    /// <summary>Weekly practices of the sport, from squad.yaml.</summary>
    public ImmutableArray<Practice> Practices { get; init; } = [];
}
