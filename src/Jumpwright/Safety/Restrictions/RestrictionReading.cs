using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Safety.Restrictions;

/// <summary>
/// A row of restrictions.csv, read. A row that cannot be read whole is not read in part: <see cref="Problem"/> says why, and the row
/// closes everything while it is in force.
/// </summary>
internal sealed record RestrictionReading(
    Restriction Row,
    Sentence? Problem,
    bool AllowsAll,
    ImmutableHashSet<string> AllowedExercises,
    bool LiftsStopSign,
    bool DischargesOperation,
    ImmutableArray<RulingEffect> Closes
)
{
    /// <summary>The place it speaks of.</summary>
    public BodySite Site => BodySite.Of(Row.Site, Row.Side);

    public bool Understood => Problem is null;

    /// <summary>Set by a named person in a licensed role.</summary>
    public bool Licensed => !string.IsNullOrWhiteSpace(Row.SetBy) && LicensedRole.Names(Row.Role);

    /// <summary>It says what may or may not be done, and does not only lift a stop sign.</summary>
    public bool SaysWhatIsAllowed =>
        AllowsAll || DischargesOperation || AllowedExercises.Count > 0 || Closes.Length > 0;

    /// <summary>Whom to ask.</summary>
    public Sentence Whom =>
        string.IsNullOrWhiteSpace(Row.SetBy) ? Sentence.Of($"whoever set it")
        : string.IsNullOrWhiteSpace(Row.Role) ? Sentence.Of($"{Row.SetBy.Trim()}")
        : Sentence.Of($"{Row.SetBy.Trim()} ({new SaidRole(Row.Role.Trim())})");

    /// <summary>How sentences name the row.</summary>
    public Sentence Name
    {
        get
        {
            Sentence dated = Row.Until is { } until
                ? Sentence.Of($"restriction from {Row.From} until {until}")
                : Sentence.Of($"restriction from {Row.From}");
            return Site.Name.Length > 0 ? Sentence.Of($"{dated}, {Site.Said}") : dated;
        }
    }

    public bool InForceOn(LocalDate day) => Row.From <= day && (Row.Until is not { } until || day <= until);

    public bool ExpiredOn(LocalDate day) => Row.Until is { } until && until < day;

    public static RestrictionReading Of(Restriction row, IReadOnlySet<string>? exerciseIds) =>
        RestrictionWords.Read(row, exerciseIds);
}
