using Jumpwright.Bench;

namespace Jumpwright.Pages.Bench;

/// <summary>The bench's own command line; the README beside the benches tells what each command measures.</summary>
internal static class Program
{
    private const string Usage = """
        make FOLDER [--athletes N] [--trials N]                a squad folder with its store: invented names, measured patterns
        run  FOLDER [--requests N] [--at-once N] [--plan yes] [--only NAME] [--program PATH]  start the program, ask for every page, print the table
        stages FOLDER [--athletes N]                           processor time of what stands behind a page
        first FOLDER [--times N] [--program PATH]              start the program, wait for its first page, several times
        start FOLDER                                           processor time of each step to the first page
        """;

    public static async Task<int> Main(string[] args)
    {
        var asked = new Asked(args);
        if (args is [not "make", var asSquad, ..] && !File.Exists(Path.Combine(asSquad, "squad.yaml")))
        {
            Console.Error.WriteLine($"'{asSquad}' holds no squad.yaml: give a folder that `make` or the demo wrote.");
            return 2;
        }

        switch (args)
        {
            case ["make", var folder, ..]:
                LargeSquad.Make(
                    folder,
                    asked.Number("--athletes", 300),
                    asked.Number("--trials", 100_000),
                    Console.Out
                );
                return 0;
            case ["run", var folder, ..]:
                await PageBench.Run(
                    folder,
                    asked.Word("--program"),
                    asked.Number("--requests", 400),
                    asked.Number("--at-once", 20),
                    asked.Word("--plan") is "yes",
                    Console.Out,
                    asked.Word("--only")
                );
                return 0;
            case ["stages", var folder, ..]:
                StageBench.Run(folder, asked.Number("--athletes", 40), Console.Out);
                return 0;
            case ["first", var folder, ..]:
                await FirstBench.Run(folder, asked.Word("--program"), asked.Number("--times", 5), Console.Out);
                return 0;
            case ["start", var folder, ..]:
                await StartBench.Run(folder, Console.Out);
                return 0;
            default:
                Console.Error.WriteLine(Usage);
                return 2;
        }
    }
}
