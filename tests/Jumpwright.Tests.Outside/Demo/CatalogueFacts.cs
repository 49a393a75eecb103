using System.Text.Json;
using Jumpwright.Tests.Outside.House;

namespace Jumpwright.Tests.Outside.Demo;

/// <summary>What a card's reader must know of an exercise, read from the catalogue's files by this test alone.</summary>
internal sealed record CatalogueFacts(
    string Id,
    string Name,
    int AchillesTier,
    bool IsDepthJump,
    bool SingleLegLanding,
    int ContactsPerRep,
    IReadOnlyList<(string Test, string? Task)> Entry
)
{
    private static readonly Lazy<IReadOnlyDictionary<string, CatalogueFacts>> Read = new(() =>
        Directory
            .EnumerateFiles(Repository.At("src", "Jumpwright", "Exercises", "Data"), "*.json")
            .Select(Of)
            .ToDictionary(e => e.Name, StringComparer.Ordinal)
    );

    public static IReadOnlyDictionary<string, CatalogueFacts> ByName => Read.Value;

    private static CatalogueFacts Of(string file)
    {
        using JsonDocument json = JsonDocument.Parse(File.ReadAllText(file));
        JsonElement root = json.RootElement;
        return new CatalogueFacts(
            root.GetProperty("id").GetString()!,
            root.GetProperty("name").GetString()!,
            root.GetProperty("demand").GetProperty("achilles").GetInt32(),
            root.GetProperty("depth_jump").GetBoolean(),
            root.GetProperty("single_leg_landing").GetBoolean(),
            root.GetProperty("contacts_per_rep").GetInt32(),
            [
                .. root.GetProperty("entry")
                    .EnumerateArray()
                    .Select(e =>
                        (
                            e.GetProperty("test").GetString()!,
                            e.TryGetProperty("task", out JsonElement task) ? task.GetString() : null
                        )
                    ),
            ]
        );
    }
}
