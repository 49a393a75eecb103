using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Progression;
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

    public static string Of(Quality quality) =>
        quality switch
        {
            Quality.Landing => "Landing",
            Quality.AnkleStiffness => "Ankle stiffness",
            Quality.Push => "Push",
            Quality.StretchShortening => "Use of the dip",
            Quality.ReactiveStrength => "Reactive strength",
            Quality.SingleLeg => "Single-leg ability",
            Quality.RunUp => "Use of the run-up",
            _ => quality.ToString(),
        };

    public static string Of(RungState state) =>
        state switch
        {
            RungState.Owned => "owned",
            RungState.Open => "open",
            RungState.Closed => "closed",
            _ => state.ToString(),
        };

    public static string Of(CriterionVerdict verdict) =>
        verdict switch
        {
            CriterionVerdict.NotTested => "not tested",
            CriterionVerdict.Stale => "out of date",
            CriterionVerdict.Unclear => "unclear",
            CriterionVerdict.NotMet => "not met",
            CriterionVerdict.Met => "met",
            _ => verdict.ToString(),
        };

    public static string Of(Device device) =>
        device switch
        {
            Device.ForcePlate => "force plate",
            Device.TwoForcePlates => "two force plates",
            Device.MatOrGate => "contact mat or light gate",
            Device.Camera => "camera",
            _ => device.ToString(),
        };

    public static string Of(Side side) =>
        side switch
        {
            Side.Left => "left",
            Side.Right => "right",
            Side.Both => "both sides",
            _ => "side not said",
        };

    public static string Of(PlanStatus status) =>
        status switch
        {
            PlanStatus.Optimal => "proven best",
            PlanStatus.Feasible => "keeps every limit, not proven best",
            PlanStatus.NoneFound => "none found in the time given",
            PlanStatus.Infeasible => "proven impossible",
            _ => status.ToString(),
        };

    public static string Of(JumpTask task) => task.Id().Replace('-', ' ');
}
