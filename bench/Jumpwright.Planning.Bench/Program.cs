using System.Globalization;

namespace Jumpwright.Planning.Bench;

/// <summary>The bench's command line.</summary>
internal static class Program
{
    private const string Usage = """
        gap   [--first N] [--seeds N] [--athletes N] [--weeks N] [--units U] [--kit SHARE] [--tell]
                                                                   gap against time, beside a greedy planner; which limits bind
        milp  [--seed N] [--athletes N] [--seconds S] [--highs]    the same problem as one plain MILP (SCIP or HiGHS inside OR-Tools)
        check [--squads N] [--first N]                             random squads of up to 8, each held against an independent checker
        brute [--squads N] [--first N]                             tiny squads against trying every plan
        collisions [--cases N] [--first N]                         impossible wishes: what is named is minimal
        replan [--seed N] [--athletes N] [--cases N] [--units U]   one athlete made anew after a knee turned sore
        rollcall [--seed N] [--athletes N]                         a session's rotation made anew
        sore  [--squads N] [--first N]                             after a pain report no session asks more of the tissue
        """;

    public static int Main(string[] args)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        double Number(string name, double otherwise)
        {
            int at = Array.IndexOf(args, name);
            return at >= 0 && at + 1 < args.Length
                ? double.Parse(args[at + 1], CultureInfo.InvariantCulture)
                : otherwise;
        }

        switch (args.FirstOrDefault())
        {
            case "gap":
                GapBench.Run(
                    (int)Number("--first", 1),
                    (int)Number("--seeds", 10),
                    (int)Number("--athletes", 30),
                    (int)Number("--weeks", 4),
                    Number("--units", 10),
                    Number("--kit", 1),
                    args.Contains("--tell"),
                    Console.Out
                );
                return 0;
            case "milp":
                MilpBench.Run(
                    args.Contains("--highs") ? "HIGHS" : "SCIP",
                    (int)Number("--seed", 1),
                    (int)Number("--athletes", 30),
                    Number("--seconds", 60),
                    Console.Out
                );
                return 0;
            case "check":
                return CheckBench.Run((int)Number("--first", 1), (int)Number("--squads", 1000), Console.Out) ? 0 : 1;
            case "replan":
                ReplanBench.Run(
                    (int)Number("--seed", 1),
                    (int)Number("--athletes", 30),
                    (int)Number("--cases", 10),
                    Number("--units", 4),
                    Console.Out
                );
                return 0;
            case "rollcall":
                RollCallBench.Run((int)Number("--seed", 1), (int)Number("--athletes", 30), Console.Out);
                return 0;
            case "brute":
                return ProofBench.Brute((int)Number("--first", 0), (int)Number("--squads", 200), Console.Out) ? 0 : 1;
            case "collisions":
                return ProofBench.Collisions((int)Number("--first", 0), (int)Number("--cases", 200), Console.Out)
                    ? 0
                    : 1;
            case "sore":
                return ProofBench.Sore((int)Number("--first", 1), (int)Number("--squads", 500), Console.Out) ? 0 : 1;
            default:
                Console.Error.WriteLine(Usage);
                return 2;
        }
    }
}
