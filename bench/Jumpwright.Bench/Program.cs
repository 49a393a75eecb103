using Jumpwright.Bench.Fuzz;
using Jumpwright.Bench.Memory;
using Jumpwright.Bench.Speed;
using Jumpwright.Bench.Values;
using Jumpwright.Simulation.Validating;

namespace Jumpwright.Bench;

/// <summary>The bench's own command line; the README beside it tells what each command measures.</summary>
internal static class Program
{
    private const string Usage = """
        bench speed  [--files N] [--rounds N]         recordings a second from CSV, against two floors of the same run
        bench stages [--files N] [--rounds N]         microseconds of each stage of measuring one recording
        bench memory [--recordings N]                 memory over many recordings
        bench fuzz   [--runs N] [--seed S] [--threads N]  spoiled files through reading and measuring
        bench fuzz   --seed S --only INDEX [--keep FILE]  one of them again
        bench values [--population house|house-clean|foreign|foreign-clean] [--each N] [--seed S] [--keep FILE]
                                                      simulated recordings of any seed beside their truth; FILE takes every value
        bench values ... --only NAME --keep FILE      one of them as a recording
        """;

    public static int Main(string[] args)
    {
        string command = args.Length > 0 ? args[0] : "";
        var asked = new Asked(args);
        switch (command)
        {
            case "speed":
                SpeedBench.Run(asked.Number("--files", 100), asked.Number("--rounds", 15), Console.Out);
                return 0;
            case "stages":
                StageBench.Run(asked.Number("--files", 20), asked.Number("--rounds", 60), Console.Out);
                return 0;
            case "memory":
                return MemoryBench.Run(asked.Number("--recordings", 100_000), Console.Out) ? 0 : 1;
            case "fuzz":
                ulong seed = (ulong)asked.Number("--seed", 1);
                return asked.Word("--only") is { } only && ulong.TryParse(only, out ulong index)
                        ? (FuzzBench.Only(seed, index, asked.Word("--keep"), Console.Out) ? 0 : 1)
                    : FuzzBench.Run(
                        asked.Number("--runs", 1_000_000),
                        seed,
                        asked.Number("--threads", Environment.ProcessorCount),
                        Console.Out
                    )
                        ? 0
                    : 1;
            case "values":
                return ValuesBench.Run(
                    asked.Word("--population") ?? "foreign",
                    asked.Number("--each", 100),
                    (ulong)asked.Number("--seed", (int)ValidationOptions.Default.Seed),
                    asked.Word("--keep"),
                    asked.Word("--only"),
                    Console.Out
                )
                    ? 0
                    : 1;
            default:
                Console.Error.WriteLine(Usage);
                return 2;
        }
    }
}
