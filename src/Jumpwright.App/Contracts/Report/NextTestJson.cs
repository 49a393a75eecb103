using System.Text.Json.Serialization;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>A test that may be done now, or the sentence why it may not.</summary>
internal sealed record NextTestJson(
    [property: JsonPropertyName("question")] string Question,
    [property: JsonPropertyName("offered")] bool Offered,
    [property: JsonPropertyName("sentence")] string Sentence,
    [property: JsonPropertyName("exercise")] string? Exercise,
    [property: JsonPropertyName("trials")] int? Trials,
    [property: JsonPropertyName("contacts")] int? Contacts,
    [property: JsonPropertyName("drop_height_m")] double? DropHeightM,
    [property: JsonPropertyName("external_load_kg")] double? ExternalLoadKg,
    [property: JsonPropertyName("run_up_speed_m_s")] double? RunUpSpeedMS,
    [property: JsonPropertyName("doubt_left")] double? DoubtLeft,
    [property: JsonPropertyName("stop")] TestStopJson? Stop
)
{
    /// <summary>Kit that makes the load where the bar is too heavy; null: the bar.</summary>
    [JsonPropertyName("instead_of_bar")]
    public string? InsteadOfBar { get; init; }

    public static NextTestJson Of(TestOffer offer) =>
        offer.Test.TryGet(out TestProposal? test, out Refusal? refusal)
            ? new(
                offer.Question,
                Offered: true,
                test.Because,
                test.ExerciseId,
                test.Ask.Trials,
                test.Contacts,
                test.Ask.DropM,
                test.Ask.LoadKg,
                test.Ask.SpeedMS,
                test.DoubtLeft,
                TestStopJson.Of(test.Stop)
            )
            {
                InsteadOfBar = test.Ask.InsteadOfBar,
            }
            : new(offer.Question, Offered: false, refusal.Sentence, null, null, null, null, null, null, null, null);
}
