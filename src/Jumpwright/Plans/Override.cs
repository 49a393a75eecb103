using Jumpwright.Athletes;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>A limit that somebody overrode, with name, reason and expiry.</summary>
/// <param name="Limit">Its id.</param>
/// <param name="Who">By name; a line of squad.yaml says so.</param>
/// <param name="Reason">In words.</param>
/// <param name="Until">Last day; of what has no end, the plan's last day.</param>
public sealed record Override(string Limit, string Who, string Reason, LocalDate Until)
{
    /// <summary>For whom; null: for the whole squad.</summary>
    public string? AthleteId { get; init; }

    /// <summary>What it is set to, in the limit's unit.</summary>
    public double Value { get; init; }

    /// <summary>What it was.</summary>
    public double Standard { get; init; }

    /// <summary>Unit of both.</summary>
    public string Unit { get; init; } = "1";

    /// <summary>How firm the limit is.</summary>
    public LimitKind Kind { get; init; }

    internal static Override Of(LimitOverride asked, LimitValue limit, LocalDate last) =>
        new(asked.Limit, asked.Who, asked.Reason, asked.Until ?? last)
        {
            AthleteId = asked.AthleteId,
            Value = asked.Value,
            Standard = limit.Value,
            Unit = limit.Unit,
            Kind = limit.Kind,
        };
}
