using System.Globalization;

namespace Jumpwright.Planning;

/// <summary>
/// CP-SAT's parameters. Eight workers taking turns in a fixed order: far better plans than one worker even on two
/// cores, and the same plan on every run as long as deterministic time, not the wall clock, ends the search.
/// </summary>
internal static class Parameters
{
    public static string Of(double deterministicTime, double wallSeconds, double gap) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"num_workers:8,interleave_search:true,random_seed:1,max_deterministic_time:{deterministicTime:0.######},max_time_in_seconds:{wallSeconds:0.######},relative_gap_limit:{gap:0.########}"
        );
}
