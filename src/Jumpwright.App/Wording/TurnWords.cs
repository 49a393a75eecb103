using Jumpwright.App.Desk;
using Jumpwright.Plans;

namespace Jumpwright.App.Wording;

/// <summary>Who stands in a turn, and what is set up for them: the drop, the box, the load.</summary>
internal static class TurnWords
{
    /// <summary>For example <c>from 10 cm: Elin, Tomas</c>, or <c>Elin (from 10 cm), Tomas (from 20 cm)</c> where it is not alike for all.</summary>
    public static string Who(Workbook book, PlannedSession session, RotationEntry turn)
    {
        (string Name, string Set)[] all =
        [
            .. turn.AthleteIds.Select(id =>
                (
                    book.Find(id)?.Athlete.Name ?? id,
                    session.ItemOf(id, turn.ExerciseId) is { } item ? ItemWords.Setting(item) : ""
                )
            ),
        ];
        string names = string.Join(", ", all.Select(a => a.Name));
        return all switch
        {
            [] => "",
            [(_, var set), ..] when all.All(a => a.Set == set) => set.Length == 0 ? names : $"{set}: {names}",
            _ => string.Join(", ", all.Select(a => a.Set.Length == 0 ? a.Name : $"{a.Name} ({a.Set})")),
        };
    }
}
