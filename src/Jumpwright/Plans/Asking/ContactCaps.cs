using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Plans.Asking;

/// <summary>
/// Contacts by level: the lower edges of the handbook's bands for a session (80–100, 100–120, 120–140; Potach and Chu,
/// from memory; consensus, not trial results). Under 16, age unknown, after an operation or under a restriction: 60
/// (house rule). A week holds two and a half sessions' worth (house rule).
/// </summary>
internal static class ContactCaps
{
    public const int Careful = 60;

    public static int PerSession(History history, LocalDate day)
    {
        int byLevel = history.Athlete.Level switch
        {
            TrainingLevel.Advanced => 120,
            TrainingLevel.Intermediate => 100,
            _ => 80,
        };
        return NeedsCare(history, day) ? Math.Min(Careful, byLevel) : byLevel;
    }

    public static int PerWeek(int perSession) => perSession * 5 / 2;

    public static int HighIntensityPerSession(History history, LocalDate day) =>
        NeedsCare(history, day)
            ? 20
            : history.Athlete.Level switch
            {
                TrainingLevel.Advanced => 40,
                TrainingLevel.Intermediate => 30,
                _ => 20,
            };

    private static bool NeedsCare(History history, LocalDate day) =>
        history.Athlete.AgeOn(day) is not { } age
        || age < 16
        || history.Athlete.Operation is not null
        || history.Restrictions.Any(r => r.From <= day);
}
