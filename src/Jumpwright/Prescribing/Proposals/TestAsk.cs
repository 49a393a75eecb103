namespace Jumpwright.Prescribing.Proposals;

/// <summary>A test as it is asked for, with the highest that was measured for this athlete, so that no step is too great.</summary>
/// <param name="ExerciseId">Exercise of the catalogue.</param>
/// <param name="Trials">How many trials.</param>
public sealed record TestAsk(string ExerciseId, int Trials)
{
    /// <summary>Height stepped from, m; null without a drop.</summary>
    public double? DropM { get; init; }

    /// <summary>The highest drop measured in the same kind of jump, m; null when none was.</summary>
    public double? HighestDropM { get; init; }

    /// <summary>Load, bar included, kg; null without one.</summary>
    public double? LoadKg { get; init; }

    /// <summary>Kit that stands in for the exercise's bar where the bar is too heavy; null: as the exercise says.</summary>
    public string? InsteadOfBar { get; init; }

    /// <summary>The heaviest load measured in the same lift or jump, kg; null when none was.</summary>
    public double? HeaviestKg { get; init; }

    /// <summary>Run-up speed, m/s; null without a run-up, or where none was measured: then at the athlete's own easy speed.</summary>
    public double? SpeedMS { get; init; }

    /// <summary>The fastest run-up measured off the same feet, m/s; null when none was.</summary>
    public double? FastestMS { get; init; }
}
