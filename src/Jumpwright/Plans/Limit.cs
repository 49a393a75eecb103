namespace Jumpwright.Plans;

/// <summary>One hard limit: a pure check of a finished plan that says in the limit's own unit what is broken.</summary>
public abstract class Limit
{
    /// <summary>Kebab-case id, the same in plan, collision and breach.</summary>
    public abstract string Id { get; }

    /// <summary>What it asks, in one sentence.</summary>
    public abstract string Sentence { get; }

    /// <summary>Where it comes from, in the bibliography.</summary>
    public abstract string SourceId { get; }

    /// <summary>All breaches; none when the plan keeps it.</summary>
    public abstract IEnumerable<Breach> Check(Plan plan, PlanRequest request);

    /// <summary>How near the plan came to it, where it can be counted.</summary>
    public virtual IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) => [];
}
