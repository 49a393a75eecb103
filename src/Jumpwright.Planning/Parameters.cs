using System.Globalization;

namespace Jumpwright.Planning;

/// <summary>
/// CP-SAT's parameters. One worker, so that the same model gives the same plan on every run as long as deterministic
/// time, not the wall clock, ends the search; models are kept small (one athlete, or a small squad), where one worker
/// proves in a fraction of a second what eight taking turns take seconds for.
/// </summary>
internal static class Parameters
{
    /// <summary>
    /// For the weeks of one athlete, hundreds of small models one after the other: with little presolve and few cuts they are
    /// proven in two thirds of the time (measured on the bench squads), though not every larger model is.
    /// </summary>
    private const string OfSmallModels =
        ",cp_model_probing_level:0,symmetry_level:0,max_presolve_iterations:1,cut_level:0";

    public static string Of(
        double deterministicTime,
        double wallSeconds,
        double gap = 0,
        bool lines = false,
        bool small = false
    ) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"num_workers:1,random_seed:1,max_deterministic_time:{deterministicTime:0.######},max_time_in_seconds:{wallSeconds:0.######},relative_gap_limit:{gap:0.########}{(lines ? ",linearization_level:2" : "")}{(small ? OfSmallModels : "")}"
        );
}
