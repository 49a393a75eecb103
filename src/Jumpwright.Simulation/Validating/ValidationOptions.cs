namespace Jumpwright.Simulation.Validating;

/// <summary>How much is simulated, and from which seed.</summary>
public sealed record ValidationOptions
{
    public static ValidationOptions Default { get; } = new();

    public ulong Seed { get; init; } = 20270104;

    /// <summary>Clean countermovement jumps (1000 Hz, two plates, ordinary sway and noise).</summary>
    public int CleanCountermovementJumps { get; init; } = 500;

    /// <summary>Clean drop jumps, likewise.</summary>
    public int CleanDropJumps { get; init; } = 200;

    /// <summary>Clean recordings of each other task.</summary>
    public int CleanOfOtherTasks { get; init; } = 200;

    /// <summary>Clean recordings of jumps and drop jumps in which the slow force is no motion of the body.</summary>
    public int Disturbed { get; init; } = 200;

    /// <summary>Efforts timed by a contact mat and by cameras, of each task and device.</summary>
    public int TimedOfEach { get; init; } = 200;

    /// <summary>Recordings of each task under varied rates, noise and faults of plates.</summary>
    public int VariedOfEachTask { get; init; } = 600;

    /// <summary>Spoiled recordings of each defect.</summary>
    public int SpoiledOfEachDefect { get; init; } = 20;
}
