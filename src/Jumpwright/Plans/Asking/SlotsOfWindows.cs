using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Plans.Asking;

/// <summary>The squad's weekly windows as sessions on days.</summary>
internal static class SlotsOfWindows
{
    /// <summary>
    /// Sessions from that day on, in time order. A start that the change of clocks skips moves forward by the gap; one
    /// that happens twice is the first.
    /// </summary>
    public static ImmutableArray<SessionSlot> Of(Squad squad, DateTimeZone zone, LocalDate from, int weeks)
    {
        var slots = ImmutableArray.CreateBuilder<SessionSlot>();
        HashSet<string> taken = new(StringComparer.Ordinal);
        for (LocalDate day = from; day < from.PlusWeeks(weeks); day = day.PlusDays(1))
        {
            foreach (TrainingWindow window in squad.Windows.Where(w => w.Day == day.DayOfWeek).OrderBy(w => w.Start))
            {
                string half = SessionSlot.IdOf(day, window.Start);
                string id = half;
                for (int n = 2; !taken.Add(id); n++)
                {
                    id = $"{half}-{n}";
                }

                slots.Add(
                    new(id, day, window.Start, window.Minutes, zone.AtLeniently(day.At(window.Start)).ToInstant())
                    {
                        Surface = window.Surface,
                    }
                );
            }
        }

        return slots.ToImmutable();
    }

    /// <summary>The same with sessions moved: called by their new day, in time order.</summary>
    /// <returns>The sessions, or a sentence: two at one time.</returns>
    public static Outcome<ImmutableArray<SessionSlot>> Of(
        Squad squad,
        DateTimeZone zone,
        LocalDate from,
        int weeks,
        ImmutableArray<MovedSession> moved
    )
    {
        if (moved.IsEmpty)
        {
            return Of(squad, zone, from, weeks);
        }

        // A session may move into these weeks or out of them.
        List<SessionSlot> slots = [.. Of(squad, zone, PlanRequest.WeekOf(from).PlusWeeks(-1), weeks + 3)];
        foreach (MovedSession move in moved)
        {
            int at = slots.FindIndex(s => s.Id == move.SessionId);
            if (at < 0)
            {
                continue;
            }

            SessionSlot was = slots[at];
            slots.RemoveAt(at);
            SessionSlot now = was with
            {
                Date = move.Date,
                Start = move.Start,
                StartUtc = zone.AtLeniently(move.Date.At(move.Start)).ToInstant(),
            };
            if (slots.Find(s => s.StartUtc < now.EndUtc && now.StartUtc < s.EndUtc) is { } other)
            {
                return Refusal.Of(
                    $"{new SaidSession(move.SessionId)} can't move to {move.Date:uuuu-MM-dd} {move.Start:HH':'mm}: {other.Said} is held then. Choose another time."
                );
            }

            string half = SessionSlot.IdOf(move.Date, move.Start);
            string id = half;
            for (int n = 2; slots.Exists(s => s.Id == id); n++)
            {
                id = $"{half}-{n}";
            }

            slots.Add(now with { Id = id });
        }

        return ImmutableArray.CreateRange(
            slots.Where(s => s.Date >= from && s.Date < from.PlusWeeks(weeks)).OrderBy(s => s.StartUtc)
        );
    }
}
