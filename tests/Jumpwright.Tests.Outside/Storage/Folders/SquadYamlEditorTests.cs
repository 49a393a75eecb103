using Jumpwright.Quantities;
using Jumpwright.Storage.Folders.Calendars;

namespace Jumpwright.Tests.Outside.Storage.Folders;

/// <summary>A count of kit changes where it stands; what a person wrote round it stays.</summary>
public class SquadYamlEditorTests
{
    private const string Head = "name: Club\ntime_zone: Europe/Paris\nwindows: []\n";

    [Theory]
    [InlineData("kit:\n  - {id: band, count: 2} # blue\n", "kit:\n  - {id: band, count: 5} # blue\n")]
    [InlineData("kit:\n  - {count: \"2\", id: band}\n", "kit:\n  - {count: 5, id: band}\n")]
    [InlineData("kit:\n  - id: band\n    count: 2 # blue\n", "kit:\n  - id: band\n    count: 5 # blue\n")]
    [InlineData(
        "kit: [{id: seat, count: 1}, {id: band, count: 2}]\n",
        "kit: [{id: seat, count: 1}, {id: band, count: 5}]\n"
    )]
    [InlineData(
        "kit: [{id: band, count: 12}, {id: band, count: 3}]\n",
        "kit: [{id: band, count: 5}, {id: band, count: 5}]\n"
    )]
    [InlineData("kit: []\n", "kit:\n  - {id: band, count: 5}\n")]
    public void WithKit_HoweverItIsWritten_ChangesTheCountAndNothingElse(string before, string after) =>
        Assert.Equal(Head + after, SquadYamlEditor.WithKit(Head + before, "band", "5").Require());

    [Theory]
    [InlineData("")]
    [InlineData("a few")]
    [InlineData("-1")]
    public void WithKit_NoWholeCount_IsRefused(string count) =>
        Assert.False(
            SquadYamlEditor
                .WithKit(Head + "kit:\n  - {id: band, count: 2}\n", "band", count)
                .TryGet(out _, out Refusal? _)
        );
}
