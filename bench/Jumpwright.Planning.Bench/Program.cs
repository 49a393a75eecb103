using System.Globalization;

namespace Jumpwright.Planning.Bench;

/// <summary>The bench's command line.</summary>
internal static class Program
{
    private const string Usage = """
        gap   [--seeds N] [--athletes N] [--weeks N] [--units U]   gap against time, beside a greedy planner; which limits bind
        milp  [--seed N] [--athletes N] [--seconds S]              the same problem as one plain MILP (SCIP inside OR-Tools)
        check [--squads N] [--first N]                             random squads of up to 8, each held against an independent checker
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
                    (int)Number("--seeds", 10),
                    (int)Number("--athletes", 30),
                    (int)Number("--weeks", 4),
                    Number("--units", 10),
                    Console.Out
                );
                return 0;
            case "milp":
                MilpBench.Run(
                    (int)Number("--seed", 1),
                    (int)Number("--athletes", 30),
                    Number("--seconds", 60),
                    Console.Out
                );
                return 0;
            case "check":
                return CheckBench.Run((int)Number("--first", 1), (int)Number("--squads", 1000), Console.Out) ? 0 : 1;
            default:
                Console.Error.WriteLine(Usage);
                return 2;
        }
    }
}
