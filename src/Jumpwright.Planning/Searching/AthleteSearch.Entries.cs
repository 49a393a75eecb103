using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Planning.Searching;

/// <content>The menu in numbers.</content>
internal sealed partial class AthleteSearch
{
    /// <summary>One menu entry in numbers.</summary>
    private sealed record Entry(
        MenuItem Menu,
        Exercise Exercise,
        SessionSlot Slot,
        int SlotIndex,
        int Min,
        int Max,
        long[] Points,
        int Goal,
        (int Row, int Each, int Once)[] Rows,
        (int Kit, int Each)[] Kit,
        int[] Level,
        bool Low,
        bool NeedsLow,
        int Heavy,
        int Light,
        long PairPoints,
        (string ExerciseId, int Sessions)[] After
    );

    private static bool IsOpen(MenuItem menu, PlanRequest request, AthleteRequest who, SessionSlot slot)
    {
        Exercise exercise = request.Catalogue.Find(menu.ExerciseId)!;
        double? drop = menu.Dose.DropHeightM;
        bool high = menu.Dose.HighIntensity || exercise.IsHighIntensityAt(drop);
        return !who.RulingsOn(slot.Date).Any(r => r.Effect.Forbids(exercise.FactsAt(drop)))
            && exercise.Kit.All(k => request.CountOf(k.Id) >= k.Count)
            && !request.Fixtures.Any(f =>
                (high && FixtureWindow.IsQuietDay(f, slot.Date, request.Limits))
                || (OrderOfWork.IsTopTier(exercise) && FixtureWindow.Of(f, request).HoursWithin(slot) > 0)
                || FixtureWindow.RecoveryMissing(exercise, slot, f, request) > 0
                || FixtureWindow.SoreLanding(exercise, slot, f, who) is not null
            )
            && !who.Recent.Any(r =>
                OrderOfWork.RecoveryHoursOf(exercise, r.Tissue) > 0
                && slot.StartUtc - r.EndUtc < Duration.FromHours(r.RecoveryHours)
            );
    }

    private Entry EntryOf(MenuItem m, PlanRequest request, SessionSlot slot, int s, Numbers n)
    {
        Exercise exercise = request.Catalogue.Find(m.ExerciseId)!;
        int each = m.Dose.Contacts(1);
        bool highItem = m.Dose.HighIntensity || exercise.IsHighIntensityAt(m.Dose.DropHeightM);
        int phase = OrderOfWork.PhaseOf(exercise, m.Dose.DropHeightM);
        int secondsEach = m.SecondsOf(1) + Who.PairSeconds(m, 1);
        List<(int, int, int)> rows =
        [
            (n.Contacts[s], each, 0),
            (n.Seconds[s], secondsEach, request.ChangeOverSeconds),
            (n.Week[n.Weeks.IndexOf(PlanRequest.WeekOf(slot.Date))], each, 0),
        ];
        if (m.Dose.HighIntensity)
        {
            rows.Add((n.High[s], each, 0));
        }

        if (Variants.KeyOf(m, request) is { } variant && !Variants.CountsWithPartner(m, Who, request))
        {
            rows.Add((n.Variants[(slot.Id, variant)], 0, 1));
        }

        for (int c = 0; c < n.Caps.Length; c++)
        {
            if (Who.Caps[c].SessionIds.Contains(slot.Id))
            {
                rows.Add((n.Caps[c], m.LoadOf(exercise, Who.Caps[c].Tissue, 1), 0));
            }
        }

        for (int g = 0; g < n.Growths.Length; g++)
        {
            LoadGrowth growth = Who.Growths[g];
            int load = m.LoadOf(exercise, growth.Tissue, 1);
            if (growth.Later.Contains(slot.Id))
            {
                rows.Add((n.Growths[g], 100 * load, 0));
            }

            if (growth.Earlier.Contains(slot.Id))
            {
                rows.Add((n.Growths[g], -(100 + growth.Percent) * load, 0));
            }
        }

        ContrastPair? asHeavy = Who.Pairs.FirstOrDefault(p =>
            p.SessionId == slot.Id && p.HeavyExerciseId == exercise.Id
        );
        int light = asHeavy is null ? -1 : n.At.GetValueOrDefault((slot.Id, asHeavy.LightExerciseId), -2);
        if (
            asHeavy is not null
            && (asHeavy.RestS < request.Limits.PairRestAtLeastS || asHeavy.RestS > request.Limits.PairRestAtMostS)
        )
        {
            light = -2;
        }

        ContrastPair? asLight = Who.Pairs.FirstOrDefault(p =>
            p.SessionId == slot.Id && p.LightExerciseId == exercise.Id && n.At.ContainsKey((slot.Id, p.HeavyExerciseId))
        );
        KeepWish? keep = n.Keeps[(slot.Id, exercise.Id)].FirstOrDefault();
        return new Entry(
            m,
            exercise,
            slot,
            s,
            m.Dose.SetsMin,
            m.Dose.SetsMax,
            [
                .. Enumerable
                    .Range(0, m.Dose.SetsMax + 1)
                    .Select(sets =>
                        sets == 0 ? 0 : Scope.PointScale * (m.PointsOf(sets) + (keep?.PointsOf(sets) ?? 0))
                    ),
            ],
            request.Trains(exercise.Id) is { } q
                ? n.GoalOf.GetValueOrDefault((q, PlanRequest.WeekOf(slot.Date)), -1)
                : -1,
            [.. rows.Where(r => r.Item2 != 0 || r.Item3 != 0)],
            [
                .. KitUse
                    .Of(exercise, phase)
                    .Where(k => n.KitIndex.ContainsKey((k.Key, slot.Id)))
                    .Select(k => (n.KitIndex[(k.Key, slot.Id)], k.Count * secondsEach)),
            ],
            [
                .. Enum.GetValues<Tissue>()
                    .Select(t => Array.IndexOf(_hours, exercise.RecoveryHours.GetValueOrDefault(t))),
            ],
            phase == 0,
            _lowOpen[s] ? phase != 0 : highItem,
            asLight is null ? -1 : n.At[(slot.Id, asLight.HeavyExerciseId)],
            light,
            asHeavy is null ? 0 : Scope.PointScale * asHeavy.Points,
            [.. m.After.Select(o => (o.ExerciseId, o.Sessions))]
        );
    }

    /// <summary>Where limits, goals and kit stand among the numbers of a search.</summary>
    private sealed record Numbers(
        int[] Contacts,
        int[] High,
        int[] Seconds,
        int[] Week,
        int[] Caps,
        int[] Growths,
        Dictionary<(string SessionId, (string Family, bool Low)), int> Variants,
        List<LocalDate> Weeks,
        Dictionary<(Quality, LocalDate), int> GoalOf,
        Dictionary<(string Key, string Session), int> KitIndex,
        Dictionary<(string SessionId, string ExerciseId), int> At,
        ILookup<(string SessionId, string ExerciseId), KeepWish> Keeps
    );
}
