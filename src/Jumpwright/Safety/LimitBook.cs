using System.Collections.Immutable;
using System.Text.Json;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>
/// Every limit as data, and what somebody set otherwise. House limits can be tightened, never loosened; published, consensus
/// and common-practice ones can be loosened by name, with a reason and an end within 28 days, as far as the data say (to twice or half of it; house rule); preferences freely.
/// </summary>
public sealed class LimitBook
{
    /// <summary>Days that an override may last.</summary>
    public const int DaysAtMost = 28;

    private const string Resource = "Jumpwright.Safety.Data.limits.json";

    private static readonly Lazy<LimitBook> Shipped = new(() => Read(Embedded.Text(Resource)).Require());

    private static readonly ImmutableDictionary<string, LimitKind> Kinds = ImmutableDictionary.CreateRange(
        StringComparer.Ordinal,
        [
            KeyValuePair.Create("house", LimitKind.House),
            KeyValuePair.Create("published", LimitKind.Published),
            KeyValuePair.Create("consensus", LimitKind.Consensus),
            KeyValuePair.Create("common-practice", LimitKind.CommonPractice),
            KeyValuePair.Create("preference", LimitKind.Preference),
        ]
    );

    private readonly ImmutableSortedDictionary<string, LimitValue> _standard;
    private readonly ImmutableSortedDictionary<string, double> _set;

    private LimitBook(
        ImmutableSortedDictionary<string, LimitValue> standard,
        ImmutableSortedDictionary<string, double> set,
        ImmutableArray<LimitOverride> inForce,
        ImmutableArray<Sentence> remarks
    )
    {
        _standard = standard;
        _set = set;
        InForce = inForce;
        Remarks = remarks;
    }

    /// <summary>The limits that ship with the product, with nothing set otherwise.</summary>
    public static LimitBook Standard => Shipped.Value;

    /// <summary>All limits as shipped, in ordinal order of their ids.</summary>
    public IEnumerable<LimitValue> All => _standard.Values;

    /// <summary>What is set otherwise and holds, in the order it was applied.</summary>
    public ImmutableArray<LimitOverride> InForce { get; }

    /// <summary>What was asked and does not hold, each as a sentence that says why.</summary>
    public ImmutableArray<Sentence> Remarks { get; }

    /// <summary>The value of a limit, in its own unit.</summary>
    /// <exception cref="KeyNotFoundException">There is no such limit: add it to limits.json.</exception>
    public double this[string id] => _set.TryGetValue(id, out double value) ? value : Find(id).Value;

    /// <summary>The limit as shipped.</summary>
    /// <exception cref="KeyNotFoundException">There is no such limit: add it to limits.json.</exception>
    public LimitValue Find(string id) =>
        _standard.TryGetValue(id, out LimitValue? limit)
            ? limit
            : throw new KeyNotFoundException($"No limit '{id}': add a line to limits.json.");

    /// <summary>A whole-numbered limit.</summary>
    public int Whole(string id) => (int)Math.Round(this[id]);

    /// <summary>The limits of one athlete on one day.</summary>
    public static LimitBook For(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        return history.Overrides.IsEmpty ? Standard : Standard.With(history.Overrides, day, day);
    }

    /// <summary>The limits of one athlete over the days of a plan: what loosens must hold on all of them, what tightens on one.</summary>
    public static LimitBook For(History history, LocalDate from, LocalDate until)
    {
        ArgumentNullException.ThrowIfNull(history);
        return history.Overrides.IsEmpty ? Standard : Standard.With(history.Overrides, from, until);
    }

    /// <summary>This book with what may be set otherwise for those days; later overrides stand over earlier ones.</summary>
    public LimitBook With(ImmutableArray<LimitOverride> overrides, LocalDate from, LocalDate until)
    {
        var set = _set.ToBuilder();
        var inForce = InForce.ToBuilder();
        var remarks = Remarks.ToBuilder();
        foreach (LimitOverride asked in overrides)
        {
            if (Refuse(asked, from, until) is { } why)
            {
                if (!why.Equals(NotOfTheseDays))
                {
                    remarks.Add(why);
                }

                continue;
            }

            // A later word stands over an earlier one, but a rule about health that was tightened is not loosened by it.
            LimitValue limit = Find(asked.Limit);
            if (
                limit.Kind == LimitKind.House
                && set.TryGetValue(asked.Limit, out double earlier)
                && (limit with { Value = earlier }).IsLoosenedBy(asked.Value)
            )
            {
                remarks.Add(
                    $"The override of '{new SaidLimit(asked.Limit)}' to {Amount(asked.Value, limit.Unit)} would loosen what is tightened to {Alone(earlier, limit.Unit)} already; {Alone(earlier, limit.Unit)} stays."
                );
                continue;
            }

            set[asked.Limit] = asked.Value;
            inForce.Add(asked);
        }

        return new(_standard, set.ToImmutable(), inForce.ToImmutable(), remarks.ToImmutable());
    }

    /// <summary>Stands for what nobody needs to be told.</summary>
    private static Sentence NotOfTheseDays { get; } = Sentence.Of($"");

    /// <summary>Null when it holds; <see cref="NotOfTheseDays"/>; else the sentence why it does not hold.</summary>
    private Sentence? Refuse(LimitOverride asked, LocalDate from, LocalDate until)
    {
        SaidLimit called = new(asked.Limit);
        Sentence name = asked.AthleteId is { } id
            ? Sentence.Of($"The override of '{called}' for {id}")
            : Sentence.Of($"The override of '{called}'");
        if (!_standard.TryGetValue(asked.Limit, out LimitValue? limit))
        {
            return asked.IsPolicy
                ? Sentence.Of(
                    $"squad.yaml: no limit or setting is called '{asked.Limit}'; it is not used. `jumpwright limits` lists them."
                )
                : Sentence.Of($"{name} names no limit there is; it is not used. `jumpwright limits` lists them.");
        }

        Sentence stays = Amount(limit.Value, limit.Unit);
        if (!double.IsFinite(asked.Value) || asked.Value < 0)
        {
            return $"{name} has no usable value; {stays} stays.";
        }

        if (!limit.Allows(asked.Value) && (!limit.IsLoosenedBy(asked.Value) || limit.Kind == LimitKind.Preference))
        {
            return $"{name} to {Amount(asked.Value, limit.Unit)} is no value such a limit can have; {stays} stays.";
        }

        LocalDate begins = asked.From ?? from;
        if (asked.Until is { } end && (end < from || begins > until || end < begins))
        {
            return end < from || begins > until
                ? NotOfTheseDays
                : Sentence.Of($"{name} ends before it begins; it is not used.");
        }

        if (limit.Kind == LimitKind.Preference || limit.IsTightenedBy(asked.Value) || !limit.IsLoosenedBy(asked.Value))
        {
            return null;
        }

        if (limit.Kind == LimitKind.House)
        {
            return $"{name} would loosen it from {Alone(limit.Value, limit.Unit)} to {Amount(asked.Value, limit.Unit)}: it is a rule about health and can only be tightened.";
        }

        if (!limit.Allows(asked.Value))
        {
            double furthest = limit.Sense == LimitSense.AtMost ? limit.Most ?? limit.Value : limit.Least;
            return $"{name} would loosen it from {Alone(limit.Value, limit.Unit)} to {Amount(asked.Value, limit.Unit)}, which is further than the {Amount(furthest, limit.Unit)} that it may be loosened to; {stays} stays.";
        }

        if (asked.IsPolicy)
        {
            return $"squad.yaml: '{called}' can be tightened there, not loosened; write it in overrides.csv with who, reason and until.";
        }

        if (string.IsNullOrWhiteSpace(asked.Who) || string.IsNullOrWhiteSpace(asked.Reason))
        {
            return $"{name} has no name or no reason; {stays} stays.";
        }

        if (asked.Until is not { } last || Period.DaysBetween(begins, last) > DaysAtMost)
        {
            return $"{name} must end within {DaysAtMost} days of {begins:uuuu-MM-dd}; {stays} stays.";
        }

        return begins > from || last < until
            ? Sentence.Of(
                $"{name} does not cover all days from {from:uuuu-MM-dd} to {until:uuuu-MM-dd}; there {stays} stays."
            )
            : null;
    }

    private static Sentence Amount(double value, string unit) =>
        unit switch
        {
            "m" => $"{new Length(value):0.########## m}",
            "kg" => $"{new Mass(value):0.########## kg}",
            _ => $"{value} {new UnitName(unit)}",
        };

    /// <summary>The same without its unit.</summary>
    private static Sentence Alone(double value, string unit) =>
        unit switch
        {
            "m" => $"{new Length(value):0.########## (m)}",
            "kg" => $"{new Mass(value):0.########## (kg)}",
            _ => $"{value}",
        };

    /// <summary>Reads the data file: a JSON array, one object a limit.</summary>
    public static Outcome<LimitBook> Read(string json)
    {
        List<LimitLine?>? lines;
        try
        {
            lines = JsonSerializer.Deserialize<List<LimitLine?>>(json, Embedded.Json);
        }
        catch (JsonException e)
        {
            return new Refusal($"The limits are not readable at line {e.LineNumber + 1}: {e.Message}");
        }

        var limits = ImmutableSortedDictionary.CreateBuilder<string, LimitValue>(StringComparer.Ordinal);
        foreach (LimitLine? line in lines ?? [])
        {
            if (
                line is not { Id: { } id, Unit: { } unit, Says: { Length: > 0 } says }
                || !Kebab.Is(id)
                || !double.IsFinite(line.Value)
                || !Kinds.TryGetValue(line.Kind ?? "", out LimitKind kind)
                || line.Sense is not ("at-most" or "at-least")
                || !Bibliography.Standard.TryFind(line.Source ?? "", out Source? source)
                || limits.ContainsKey(id)
                || line.Least is not { } least
                || !(least <= line.Value)
                || line.Most < line.Value
            )
            {
                return new Refusal(
                    $"The limit '{line?.Id}' needs an id of its own, a value, the least and, where there is one, the most it may be set to, a unit, a kind, a sense, a source of the bibliography and what it says."
                );
            }

            LimitSense sense = line.Sense == "at-most" ? LimitSense.AtMost : LimitSense.AtLeast;
            limits.Add(
                id,
                new LimitValue(id, line.Value, unit, kind, sense, source, says) { Least = least, Most = line.Most }
            );
        }

        return new LimitBook(
            limits.ToImmutable(),
            ImmutableSortedDictionary.Create<string, double>(StringComparer.Ordinal),
            [],
            []
        );
    }

    private sealed record LimitLine(
        string? Id,
        double Value,
        double? Least,
        double? Most,
        string? Unit,
        string? Kind,
        string? Sense,
        string? Source,
        string? Says
    );
}
