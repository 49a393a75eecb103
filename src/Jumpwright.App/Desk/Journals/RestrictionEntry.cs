using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Athletes;
using Jumpwright.Trials;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Desk.Journals;

/// <summary>What a person allows or forbids, with the columns of restrictions.csv; see <see cref="Restriction"/>.</summary>
internal sealed record RestrictionEntry(
    [property: JsonPropertyName("from")] string From,
    [property: JsonPropertyName("until")] string? Until,
    [property: JsonPropertyName("site")] string? Site,
    [property: JsonPropertyName("side")] string? Side,
    [property: JsonPropertyName("allowed")] ImmutableArray<string> Allowed,
    [property: JsonPropertyName("forbidden")] ImmutableArray<string> Forbidden,
    [property: JsonPropertyName("limit")] string? Limit,
    [property: JsonPropertyName("set_by")] string? SetBy,
    [property: JsonPropertyName("role")] string? Role,
    [property: JsonPropertyName("note")] string? Note
)
{
    /// <summary>
    /// The row it stands for. A first day that can't be read is taken for the start of all days, a last one for none, so that it
    /// closes rather than opens; without a name or a role the row closes everything.
    /// </summary>
    public Restriction Of(string athleteId) =>
        new(
            athleteId,
            Day(From) ?? LocalDate.MinIsoValue,
            Day(Until),
            Site,
            Sides.Read(Side),
            Allowed.IsDefault ? [] : Allowed,
            Forbidden.IsDefault ? [] : Forbidden,
            Limit,
            SetBy,
            Role,
            Note
        );

    /// <summary>The same with the earliest of those days for its last one, where that is earlier than its own and not before its first.</summary>
    public RestrictionEntry EndingOn(IEnumerable<LocalDate> days) =>
        days.Where(d => d >= Day(From) && (Day(Until) is not { } own || d < own)).ToArray() is { Length: > 0 } earlier
            ? this with
            {
                Until = LocalDatePattern.Iso.Format(earlier.Min()),
            }
            : this;

    private static LocalDate? Day(string? written) =>
        LocalDatePattern.Iso.Parse(written ?? "") is { Success: true, Value: var day } ? day : null;
}
