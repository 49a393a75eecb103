using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>
/// Contacts by level, out of limits.json: the lower edges of the handbook's bands for a session (Potach and Chu, from
/// memory; consensus, not trial results), fewer where care is needed; a week holds so many sessions' worth.
/// </summary>
internal static class ContactCaps
{
    public static int PerSession(History history, LimitBook limits, LocalDate day)
    {
        int byLevel = limits.Whole("contacts-per-session-" + LevelWord(history));
        return NeedsCare(history, day) ? Math.Min(limits.Whole("contacts-per-session-careful"), byLevel) : byLevel;
    }

    /// <summary>The same now: after illness or time off fewer (common practice: half), until the ladder says they are back.</summary>
    public static int PerSessionNow(History history, bool comingBack, LimitBook limits, LocalDate day)
    {
        int usual = PerSession(history, limits, day);
        return comingBack ? (int)(usual * limits["contacts-coming-back"]) : usual;
    }

    /// <summary>That day: so many, or fewer where a ruling of the day asks for it.</summary>
    public static int OnDay(int perSession, IEnumerable<Ruling> rulings) =>
        rulings
            .Select(r => r.Effect)
            .OfType<ContactsPerSessionAtMost>()
            .Select(e => e.Contacts)
            .Append(perSession)
            .Min();

    public static int PerWeek(int perSession, LimitBook limits) =>
        (int)(perSession * limits["sessions-worth-per-week"]);

    public static int AllJumpingPerWeek(int perSession, LimitBook limits) =>
        (int)(perSession * limits["all-jumping-per-week"]);

    public static int HighIntensityPerSession(History history, LimitBook limits, LocalDate day) =>
        limits.Whole("high-intensity-contacts-" + (NeedsCare(history, day) ? "beginner" : LevelWord(history)));

    /// <summary>Percent by which a tissue's demand may grow from week to week.</summary>
    public static int WeeklyGrowth(History history, LimitBook limits, LocalDate day) =>
        limits.Whole("weekly-growth-" + (NeedsCare(history, day) ? "beginner" : LevelWord(history)));

    private static string LevelWord(History history) =>
        history.Athlete.Level switch
        {
            TrainingLevel.Advanced => "advanced",
            TrainingLevel.Intermediate => "intermediate",
            _ => "beginner",
        };

    private static bool NeedsCare(History history, LocalDate day) =>
        history.Athlete.AgeOn(day) is not { } age
        || age < 16
        || history.Athlete.Operation is not null
        || history.Restrictions.Any(r => r.From <= day);
}
