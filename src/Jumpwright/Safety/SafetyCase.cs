using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Safety.Restrictions;
using Jumpwright.Safety.Symptoms;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>One athlete on one day, with only what was known by then, read once for all rules.</summary>
internal sealed class SafetyCase
{
    public SafetyCase(History history, LocalDate day, IReadOnlySet<string>? exerciseIds)
    {
        Athlete = history.Athlete;
        Day = day;
        Symptoms = [.. history.Symptoms.Where(s => s.Date <= day).OrderBy(s => s.Date)];
        Completed = [.. history.Completed.Where(c => c.Date <= day).OrderBy(c => c.Date)];
        Rows = [.. history.Restrictions.Select(r => RestrictionReading.Of(r, exerciseIds)).OrderBy(r => r.Row.From)];
        Limits = LimitBook.For(history, day);
        Episodes = PainEpisodes.Of(Symptoms, day, Limits.Whole(PainEpisodes.Window));
    }

    public Athlete Athlete { get; }

    public LocalDate Day { get; }

    /// <summary>Reports up to the day, oldest first.</summary>
    public ImmutableArray<SymptomReport> Symptoms { get; }

    /// <summary>Work done up to the day, oldest first.</summary>
    public ImmutableArray<CompletedItem> Completed { get; }

    /// <summary>All rows of restrictions, read, oldest first.</summary>
    public ImmutableArray<RestrictionReading> Rows { get; }

    /// <summary>Pain and stiffness that still count, by site and side.</summary>
    public ImmutableArray<PainEpisode> Episodes { get; }

    /// <summary>The limits of this athlete on this day.</summary>
    public LimitBook Limits { get; }

    public int DaysSince(LocalDate date) => Period.DaysBetween(date, Day);
}
