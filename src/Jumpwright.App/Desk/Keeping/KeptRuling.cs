using System.Collections.Immutable;
using Jumpwright.Plans;
using NodaTime;

namespace Jumpwright.App.Desk.Keeping;

/// <summary>A ruling that a plan was made under, by its English words, and the plan's days that it rules.</summary>
internal sealed record KeptRuling(string AthleteId, string Because, ImmutableArray<LocalDate> Days)
{
    public static IEnumerable<KeptRuling> Of(AthleteRequest asked) =>
        from day in asked.RulingsByDay
        from ruling in day.Value
        group day.Key by ruling.Because.ToString() into days
        orderby days.Key
        select new KeptRuling(asked.Athlete.Id, days.Key, [.. days.Distinct().Order()]);
}
