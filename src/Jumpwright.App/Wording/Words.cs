using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.App.Wording;

/// <summary>The trade's words for the core's enumerations, for screens and terminals.</summary>
internal static class Words
{
    public static string Of(Stage stage) =>
        stage switch
        {
            Stage.Landing => "Landing",
            Stage.AnkleStiffness => "Ankle stiffness",
            Stage.PushToBox => "Push to a box",
            Stage.FloorJump => "Floor jumps",
            Stage.Resisted => "Resistance",
            Stage.Shock => "Shock",
            Stage.ContinuousSingleLeg => "Continuous on one leg",
            Stage.RunUp => "Running jumps",
            _ => stage.ToString(),
        };

    public static string Of(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => "Achilles",
            Tissue.Patellar => "patellar tendon",
            Tissue.Hip => "hip",
            Tissue.Bone => "bone",
            _ => tissue.ToString(),
        };

    public static string Of(JumpTask task) => task.Id().Replace('-', ' ');
}
