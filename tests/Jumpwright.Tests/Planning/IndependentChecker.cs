using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Planning;

/// <summary>
/// Checks a plan against its request with arithmetic of its own: it calls nothing of the planner, the judge, the limits
/// or the helpers they share, only plain fields of the records. What it says is written so that a person can recompute it.
/// </summary>
internal static class IndependentChecker
{
    /// <summary>One item, as bare data.</summary>
    public readonly record struct Done(string Athlete, string Session, string Exercise, int Sets);

    /// <summary>Everything that is wrong with a finished plan.</summary>
    public static List<string> Check(Plan plan, PlanRequest request)
    {
        List<string> wrong = [];
        if (plan.Status is PlanStatus.Infeasible or PlanStatus.NoneFound)
        {
            if (plan.Sessions.Length > 0)
            {
                wrong.Add("sessions in a plan without solution");
            }

            return wrong;
        }

        List<Done> done = [];
        foreach (PlannedSession session in plan.Sessions)
        {
            foreach (AthleteSession one in session.Athletes)
            {
                foreach (PlannedItem item in one.Items)
                {
                    done.Add(new(one.AthleteId, session.Slot.Id, item.Dose.ExerciseId, item.Sets));
                }
            }
        }

        wrong.AddRange(Items(done, request));
        foreach (AthleteRequest who in request.Athletes)
        {
            wrong.AddRange(OfAthlete([.. done.Where(d => d.Athlete == who.Athlete.Id)], who, request));
        }

        wrong.AddRange(Kit(done, request));
        foreach (PlannedSession session in plan.Sessions)
        {
            wrong.AddRange(Floor(session, request));
        }

        foreach (LockedItem l in request.Locks)
        {
            if (!done.Contains(new(l.AthleteId, l.SessionId, l.ExerciseId, l.Sets)))
            {
                wrong.Add($"lock {l.AthleteId} {l.SessionId} {l.ExerciseId} x{l.Sets} not kept");
            }
        }

        foreach (Wish w in request.Wishes)
        {
            int times = done.Count(d =>
                d.Athlete == w.AthleteId
                && d.Exercise == w.ExerciseId
                && d.Sets >= w.SetsAtLeast
                && (w.SessionId == null || w.SessionId == d.Session)
            );
            if (times < w.TimesAtLeast)
            {
                wrong.Add($"wish {w.AthleteId} {w.ExerciseId}: {times} times");
            }
        }

        double value = Value(done, request);
        if (Math.Abs(value - plan.Objective!.Value) > 1e-9 || plan.BestBound < plan.Objective)
        {
            wrong.Add($"objective {plan.Objective} bound {plan.BestBound}, items are worth {value}");
        }

        if (plan.Status == PlanStatus.Optimal && plan.Gap > 1e-6)
        {
            wrong.Add("called optimal with a gap");
        }

        return wrong;
    }

    /// <summary>Points of items, added up here, less what groups and unevenness cost.</summary>
    public static double Value(IReadOnlyCollection<Done> done, PlanRequest request) =>
        Math.Floor(Gains(done, request) - Together(done, request) + 1e-9);

    /// <summary>Points off for every exercise of a session, and for uneven weeks; one athlete alone has no groups.</summary>
    public static double Together(IReadOnlyCollection<Done> done, PlanRequest request)
    {
        if (request.Athletes.Length < 2)
        {
            return 0;
        }

        double off = 0;
        foreach (var week in request.Slots.GroupBy(s => s.Date.PlusDays(-(((int)s.Date.DayOfWeek + 6) % 7))))
        {
            List<int> groups = [];
            foreach (SessionSlot slot in week)
            {
                groups.Add(done.Where(d => d.Session == slot.Id).Select(d => d.Exercise).Distinct().Count());
            }

            off += groups.Sum() * request.Limits.PointsEachGroup;
            off += (groups.Max() - groups.Min()) * request.Limits.PointsUnevenStaff;
            foreach (string kit in request.Kit.Select(k => k.Id).Distinct())
            {
                List<int> seconds = [];
                foreach (SessionSlot slot in week)
                {
                    seconds.Add(
                        done.Where(d => d.Session == slot.Id)
                            .Sum(d =>
                                ExerciseOf(d.Exercise, request).Kit.Where(k => k.Id == kit).Sum(k => k.Count)
                                * SecondsOf(d, request.Athletes.Single(a => a.Athlete.Id == d.Athlete), slot)
                            )
                    );
                }

                off += Math.Ceiling((seconds.Max() - seconds.Min()) / 60.0) * request.Limits.PointsUnevenKit;
            }
        }

        return off;
    }

    /// <summary>Points of items without what they cost side by side.</summary>
    public static double Gains(IReadOnlyCollection<Done> done, PlanRequest request)
    {
        double sum = 0;
        foreach (AthleteRequest who in request.Athletes)
        {
            var own = done.Where(d => d.Athlete == who.Athlete.Id).ToList();
            foreach (Done d in own)
            {
                MenuItem entry = who.Menu.Single(m => m.SessionId == d.Session && m.Dose.ExerciseId == d.Exercise);
                foreach (
                    KeepWish keep in request.Keeps.Where(k =>
                        k.AthleteId == d.Athlete && k.SessionId == d.Session && k.ExerciseId == d.Exercise
                    )
                )
                {
                    sum += keep.ItemPoints + (keep.Sets == d.Sets ? keep.SetsPoints : 0);
                }

                for (int set = 1; set <= Math.Min(d.Sets, entry.SetPoints.Length); set++)
                {
                    sum += entry.SetPoints[set - 1];
                }
            }

            foreach (ContrastPair pair in who.Pairs)
            {
                var here = own.Where(d => d.Session == pair.SessionId).Select(d => d.Exercise).ToList();
                if (here.Contains(pair.HeavyExerciseId) && here.Contains(pair.LightExerciseId))
                {
                    sum += pair.Points;
                }
            }

            foreach (QualityGoal goal in who.Goals)
            {
                int sets = 0;
                foreach (Done d in own)
                {
                    LocalDate day = request.Slots.Single(s => s.Id == d.Session).Date;
                    bool inWeek = day >= goal.WeekOf && day < goal.WeekOf.PlusDays(7);
                    if (inWeek && ExerciseOf(d.Exercise, request).Trains[0] == goal.Quality)
                    {
                        sets += d.Sets;
                    }
                }

                for (int set = 0; set < sets && set < goal.SetPoints.Length; set++)
                {
                    sum += goal.SetPoints[set];
                }
            }
        }

        return sum;
    }

    /// <summary>What is wrong with single items: not open, closed by a ruling, a fixture or earlier work.</summary>
    public static List<string> Items(IReadOnlyCollection<Done> done, PlanRequest request)
    {
        List<string> wrong = [];
        if (done.Count != done.Select(d => (d.Athlete, d.Session, d.Exercise)).Distinct().Count())
        {
            wrong.Add("an item stands twice");
        }

        foreach (Done d in done)
        {
            AthleteRequest who = request.Athletes.Single(a => a.Athlete.Id == d.Athlete);
            SessionSlot slot = request.Slots.Single(s => s.Id == d.Session);
            MenuItem? entry = who.Menu.SingleOrDefault(m =>
                m.SessionId == d.Session && m.Dose.ExerciseId == d.Exercise
            );
            if (entry == null || d.Sets < entry.Dose.SetsMin || d.Sets > entry.Dose.SetsMax)
            {
                wrong.Add($"{d} is not open");
                continue;
            }

            Exercise exercise = ExerciseOf(d.Exercise, request);
            double? drop = entry.Dose.DropHeightM;
            if (drop is { } from && !LogLeadsTo(from, exercise, who, request))
            {
                wrong.Add($"{d} drops from {from}, more than a step above the log");
            }

            bool top = exercise.Demand.Any(t => t.Value >= 3);
            bool high = top || drop >= 0.30;
            if (who.RulingsByDay.TryGetValue(slot.Date, out var rulings))
            {
                foreach (Ruling ruling in rulings)
                {
                    bool forbidden = ruling.Effect switch
                    {
                        NothingPlanned => true,
                        NoDepthJumps => exercise.IsDepthJump,
                        NoHighIntensity => high,
                        NoExternalLoad => exercise.ExternalLoad != null,
                        NoSingleLegLandings => exercise.SingleLegLanding,
                        NotExercises not => not.Ids.Contains(d.Exercise),
                        OnlyExercises only => !only.Ids.Contains(d.Exercise),
                        TierAtMost tier => exercise.Demand[tier.Tissue] > tier.Tier,
                        DropAtMost cap => drop > cap.HeightM + 1e-9,
                        NoJumps => exercise.ContactsPerRep > 0,
                        NoAnkleSprings => exercise.Stage == Stage.AnkleStiffness,
                        NoRunUps => exercise.Stage == Stage.RunUp,
                        ContactsPerSessionAtMost => false,
                        _ => throw new NotSupportedException($"a ruling this checker does not know: {ruling.Effect}"),
                    };
                    if (forbidden)
                    {
                        wrong.Add($"{d} is forbidden by {ruling.LimitId}");
                    }
                }
            }

            foreach (var fixture in request.Fixtures)
            {
                int daysBefore = Period.DaysBetween(slot.Date, fixture.Date);
                if (
                    daysBefore >= 0
                    && daysBefore <= who.SoreLandingDaysBeforeFixture
                    && exercise.Landing == "floor"
                    && who.RulingsByDay.TryGetValue(slot.Date, out var ofDay)
                )
                {
                    foreach (Ruling held in ofDay)
                    {
                        if (held.Effect is TierAtMost guarded && exercise.Demand[guarded.Tissue] >= 1)
                        {
                            wrong.Add(
                                $"{d} lands on the floor with a sore {guarded.Tissue}, {daysBefore} days before {fixture.Name}"
                            );
                        }
                    }
                }

                if (high && daysBefore >= 0 && daysBefore <= request.Limits.HighIntensityDaysBeforeFixture)
                {
                    wrong.Add($"{d} of high intensity {daysBefore} days before {fixture.Name}");
                }

                DateTimeZone zone = DateTimeZoneProviders.Tzdb[request.TimeZone];
                Instant begins = fixture.Start is { } start
                    ? zone.AtLeniently(fixture.Date + start).ToInstant()
                    : zone.AtStartOfDay(fixture.Date).ToInstant();
                Instant ends = fixture.Start is null
                    ? zone.AtStartOfDay(fixture.Date.PlusDays(1)).ToInstant()
                    : begins + Duration.FromHours(2);
                double before = (begins - slot.StartUtc).TotalHours - (slot.Minutes / 60.0);
                double after = (slot.StartUtc - ends).TotalHours;
                foreach (var recovery in exercise.RecoveryHours.Where(r => r.Value > 0 && slot.StartUtc < begins))
                {
                    if (before < (recovery.Value * request.Limits.RecoveryShareBeforeFixture) - 1e-9)
                    {
                        wrong.Add(
                            $"{d}: {before:0.#} h to {fixture.Name}, the {recovery.Key} needs {recovery.Value} h"
                        );
                    }
                }

                if (
                    top
                    && before < request.Limits.TopTierHoursRoundFixture - 1e-9
                    && after < request.Limits.TopTierHoursRoundFixture - 1e-9
                )
                {
                    wrong.Add($"{d} of the top tier {before:0.#} h before or {after:0.#} h after {fixture.Name}");
                }
            }

            foreach (RecentWork recent in who.Recent)
            {
                double hours = (slot.StartUtc - recent.EndUtc).TotalHours;
                if (exercise.RecoveryHours[recent.Tissue] > 0 && hours < recent.RecoveryHours)
                {
                    wrong.Add($"{d} only {hours:0.#} h after {recent.ExerciseId}");
                }
            }
        }

        return wrong;
    }

    /// <summary>What is wrong with one athlete's whole plan.</summary>
    public static List<string> OfAthlete(IReadOnlyCollection<Done> done, AthleteRequest who, PlanRequest request)
    {
        List<string> wrong = [];
        Dictionary<LocalDate, int> weeks = [];
        List<(SessionSlot Slot, Exercise Exercise)> all = [];
        foreach (var session in done.GroupBy(d => d.Session))
        {
            SessionSlot slot = request.Slots.Single(s => s.Id == session.Key);
            int contacts = 0,
                high = 0,
                seconds = 0;
            bool anyLow = false,
                anyHigh = false;
            foreach (Done d in session)
            {
                MenuItem entry = who.Menu.Single(m => m.SessionId == d.Session && m.Dose.ExerciseId == d.Exercise);
                Exercise exercise = ExerciseOf(d.Exercise, request);
                all.Add((slot, exercise));
                int its = d.Sets * entry.Dose.Reps * entry.Dose.ContactsPerRep * (entry.Dose.Limb == "each" ? 2 : 1);
                contacts += its;
                if (entry.Dose.HighIntensity)
                {
                    high += its;
                    anyHigh = true;
                }

                seconds += SecondsOf(d, who, slot) + (int)Math.Ceiling(request.Limits.ChangeOverMinutes * 60);
                anyLow |= IsLow(exercise, entry.Dose.DropHeightM);
            }

            int cap = who.ContactsPerSessionAtMost;
            if (who.RulingsByDay.TryGetValue(slot.Date, out var rulings))
            {
                foreach (var effect in rulings.Select(r => r.Effect).OfType<ContactsPerSessionAtMost>())
                {
                    cap = Math.Min(cap, effect.Contacts);
                }
            }

            if (contacts > cap)
            {
                wrong.Add($"{who.Athlete.Id} {slot.Id}: {contacts} contacts, {cap} allowed");
            }

            if (high > who.HighIntensityContactsPerSessionAtMost)
            {
                wrong.Add($"{who.Athlete.Id} {slot.Id}: {high} high-intensity contacts");
            }

            double room = (slot.Minutes - request.Limits.OpeningMinutes - request.Limits.WaitingMinutes) * 60;
            if (seconds > room + 1e-6)
            {
                wrong.Add($"{who.Athlete.Id} {slot.Id}: {seconds} s of work, room for {room}");
            }

            int count = session.Count();
            if (count > who.ExercisesPerSessionAtMost || count < who.ExercisesPerSessionAtLeast)
            {
                wrong.Add($"{who.Athlete.Id} {slot.Id}: {count} exercises");
            }

            wrong.AddRange(Families(session.Key, [.. session], who, request));
            bool lowOnMenu = who
                .Menu.Where(m => m.SessionId == slot.Id)
                .Any(m => IsLow(ExerciseOf(m.Dose.ExerciseId, request), m.Dose.DropHeightM));
            if (!anyLow && (lowOnMenu || anyHigh))
            {
                wrong.Add($"{who.Athlete.Id} {slot.Id}: no low work to begin with");
            }

            foreach (ContrastPair pair in who.Pairs.Where(p => p.SessionId == slot.Id))
            {
                int heavy = session.Where(d => d.Exercise == pair.HeavyExerciseId).Sum(d => d.Sets);
                int light = session.Where(d => d.Exercise == pair.LightExerciseId).Sum(d => d.Sets);
                if (heavy > 0 && heavy != light)
                {
                    wrong.Add($"{who.Athlete.Id} {slot.Id}: pair {heavy} against {light}");
                }
            }

            LocalDate monday = slot.Date;
            while (monday.DayOfWeek != IsoDayOfWeek.Monday)
            {
                monday = monday.PlusDays(-1);
            }

            weeks[monday] = weeks.GetValueOrDefault(monday) + contacts;
        }

        foreach ((LocalDate monday, int contacts) in weeks)
        {
            if (contacts > who.ContactsPerWeekAtMost)
            {
                wrong.Add($"{who.Athlete.Id} week {monday}: {contacts} contacts");
            }
        }

        wrong.AddRange(Loads(done, who, request));
        foreach (var (one, a) in all)
        {
            foreach (var (other, b) in all)
            {
                if (one.StartUtc >= other.StartUtc)
                {
                    continue;
                }

                double hours = (other.StartUtc - one.StartUtc).TotalHours - (one.Minutes / 60.0);
                foreach (Tissue tissue in a.RecoveryHours.Keys)
                {
                    if (
                        a.RecoveryHours[tissue] > 0
                        && b.RecoveryHours[tissue] > 0
                        && hours < a.RecoveryHours[tissue] - 1e-9
                    )
                    {
                        wrong.Add($"{who.Athlete.Id}: {b.Id} {hours:0.##} h after {a.Id}, {tissue}");
                    }
                }
            }
        }

        return wrong;
    }

    /// <summary>Two variants of one exercise in a session, unless they are a pair, one begins it, or both are locked.</summary>
    private static IEnumerable<string> Families(
        string session,
        List<Done> done,
        AthleteRequest who,
        PlanRequest request
    )
    {
        bool Low(string id) =>
            IsLow(
                ExerciseOf(id, request),
                who.Menu.Single(m => m.SessionId == session && m.Dose.ExerciseId == id).Dose.DropHeightM
            );
        foreach (string? family in done.Select(d => ExerciseOf(d.Exercise, request).Family).Distinct())
        {
            foreach (bool low in new[] { true, false })
            {
                string[] its =
                [
                    .. done.Select(d => d.Exercise)
                        .Where(id => ExerciseOf(id, request).Family == family && Low(id) == low),
                ];
                int pairs = who.Pairs.Count(p =>
                    p.SessionId == session && its.Contains(p.HeavyExerciseId) && its.Contains(p.LightExerciseId)
                );
                int locked = request
                    .Locks.Where(l => l.AthleteId == who.Athlete.Id && l.SessionId == session)
                    .Count(l => its.Contains(l.ExerciseId));
                int most = Math.Max(who.VariantsPerSessionAtMost, locked);
                if (family != null && its.Length - pairs > most)
                {
                    yield return $"{who.Athlete.Id} {session}: {string.Join(", ", its)} are variants of one exercise";
                }
            }
        }
    }

    /// <summary>What is wrong with the sums over weeks, and with steps that are to open.</summary>
    public static List<string> Loads(IReadOnlyCollection<Done> done, AthleteRequest who, PlanRequest request)
    {
        List<string> wrong = [];
        long Sum(IEnumerable<string> sessions, Tissue? tissue)
        {
            long sum = 0;
            foreach (Done d in done.Where(d => sessions.Contains(d.Session)))
            {
                Dose dose = who.Menu.Single(m => m.SessionId == d.Session && m.Dose.ExerciseId == d.Exercise).Dose;
                int contacts = d.Sets * dose.Reps * dose.ContactsPerRep * (dose.Limb == "each" ? 2 : 1);
                sum += tissue == null ? contacts : contacts * ExerciseOf(d.Exercise, request).Demand[tissue.Value];
            }

            return sum;
        }

        foreach (LoadCap cap in who.Caps)
        {
            if (Sum(cap.SessionIds, cap.Tissue) > cap.AtMost)
            {
                wrong.Add($"{who.Athlete.Id}: {cap.LimitId} {cap.Tissue} over {cap.AtMost}");
            }
        }

        foreach (LoadGrowth growth in who.Growths)
        {
            double most = (Sum(growth.Earlier, growth.Tissue) * (1 + (growth.Percent / 100.0))) + growth.Step;
            if (Sum(growth.Later, growth.Tissue) > most + 1e-6)
            {
                wrong.Add($"{who.Athlete.Id}: {growth.Tissue} grows past {most:0.#} in the week of {growth.Later[0]}");
            }
        }

        foreach (Done d in done)
        {
            LocalDate day = request.Slots.Single(s => s.Id == d.Session).Date;
            foreach (
                Opening opening in who
                    .Menu.Single(m => m.SessionId == d.Session && m.Dose.ExerciseId == d.Exercise)
                    .After
            )
            {
                int before = done.Count(o =>
                    o.Exercise == opening.ExerciseId && request.Slots.Single(s => s.Id == o.Session).Date < day
                );
                if (before < opening.Sessions)
                {
                    wrong.Add($"{d} after {before} sessions of {opening.ExerciseId}");
                }
            }
        }

        return wrong;
    }

    /// <summary>What is wrong with the sum of kit minutes.</summary>
    public static List<string> Kit(IReadOnlyCollection<Done> done, PlanRequest request)
    {
        List<string> wrong = [];
        foreach (SessionSlot slot in request.Slots)
        {
            Dictionary<string, int> use = [];
            Dictionary<string, int> fresh = [];
            foreach (Done d in done.Where(d => d.Session == slot.Id))
            {
                AthleteRequest who = request.Athletes.Single(a => a.Athlete.Id == d.Athlete);
                foreach (KitNeed need in ExerciseOf(d.Exercise, request).Kit)
                {
                    use[need.Id] = use.GetValueOrDefault(need.Id) + (need.Count * SecondsOf(d, who, slot));
                    double? drop = who
                        .Menu.Single(m => m.SessionId == d.Session && m.Dose.ExerciseId == d.Exercise)
                        .Dose.DropHeightM;
                    if (IsFresh(ExerciseOf(d.Exercise, request), drop))
                    {
                        fresh[need.Id] = fresh.GetValueOrDefault(need.Id) + (need.Count * SecondsOf(d, who, slot));
                    }
                }
            }

            foreach ((string kit, int seconds) in fresh)
            {
                int count = request.Kit.Where(k => k.Id == kit).Sum(k => k.Count);
                double working = count * (slot.Minutes - request.Limits.OpeningMinutes) * 60;
                if (seconds > (working * request.Limits.FreshKitShareAtMost) + 1e-6)
                {
                    wrong.Add($"{kit} {slot.Id}: {seconds} s of fresh work");
                }
            }

            foreach ((string kit, int seconds) in use)
            {
                int count = request.Kit.Where(k => k.Id == kit).Sum(k => k.Count);
                double room =
                    count * (slot.Minutes - request.Limits.OpeningMinutes) * 60 * request.Limits.KitShareAtMost;
                if (seconds > room + 1e-6)
                {
                    wrong.Add($"{kit} {slot.Id}: {seconds} s, room for {room}");
                }
            }
        }

        return wrong;
    }

    /// <summary>
    /// Enough days of drops at most a step lower, that ask as much: a rebound is asked for a rebound, one leg for one leg. Above the lowest of its
    /// range the exercise's own days too. The first step needs none.
    /// </summary>
    private static bool LogLeadsTo(double fromM, Exercise exercise, AthleteRequest who, PlanRequest request)
    {
        int all = 0;
        int own = 0;
        foreach (var day in who.Drops.Clean.Where(d => d.HeightM + who.DropStepM >= fromM - 1e-6).GroupBy(d => d.Date))
        {
            Exercise[] done = [.. day.Select(d => ExerciseOf(d.ExerciseId, request))];
            bool same = done.Any(e =>
                !(exercise.IsDepthJump && !e.IsDepthJump) && !(exercise.SingleLegLanding && !e.SingleLegLanding)
            );
            all += same ? 1 : 0;
            own += done.Any(e => e.Id == exercise.Id) ? 1 : 0;
        }

        bool first = fromM <= who.DropStepM + 1e-6;
        bool lowest = fromM <= exercise.DropRangeM!.Value.MinM + 1e-6;
        return (first || all >= who.Drops.Sessions) && (lowest || own >= who.Drops.Sessions);
    }

    public static bool IsLow(Exercise exercise, double? dropM) =>
        (exercise.Stage == Stage.Landing || exercise.Stage == Stage.AnkleStiffness)
        && exercise.RecoveryHours.All(r => r.Value == 0)
        && exercise.Demand.All(t => t.Value <= 2)
        && !(dropM >= 0.30);

    public static bool IsFresh(Exercise exercise, double? dropM) =>
        exercise.Stage == Stage.Shock
        || exercise.Stage == Stage.RunUp
        || exercise.Demand.Any(t => t.Value >= 3)
        || dropM >= 0.30;

    /// <summary>Seconds of an item; a heavy one of a pair also waits for its light partner.</summary>
    public static int SecondsOf(Done d, AthleteRequest who, SessionSlot slot)
    {
        MenuItem entry = who.Menu.Single(m => m.SessionId == d.Session && m.Dose.ExerciseId == d.Exercise);
        int each = (int)Math.Ceiling(entry.Dose.MinutesPerSet * 60);
        foreach (ContrastPair pair in who.Pairs)
        {
            if (pair.SessionId == slot.Id && pair.HeavyExerciseId == d.Exercise)
            {
                each += Math.Max(0, pair.RestS - entry.Dose.RestBetweenSetsS);
            }
        }

        return each * d.Sets;
    }

    private static Exercise ExerciseOf(string id, PlanRequest request) =>
        request.Catalogue.Exercises.Single(e => e.Id == id);

    private static bool Near(double? one, double? other) =>
        one is null || other is null ? one == other : Math.Abs(one.Value - other.Value) < 1 / 30.0;

    /// <summary>What is wrong with a session's time line, minute by tenth of a minute.</summary>
    private static List<string> Floor(PlannedSession session, PlanRequest request)
    {
        List<string> wrong = [];
        foreach (RotationEntry entry in session.Rotation)
        {
            if (
                entry.StartMin < request.Limits.OpeningMinutes - 1e-9
                || entry.EndMin > session.Slot.Minutes + 1e-9
                || entry.EndMin <= entry.StartMin
            )
            {
                wrong.Add($"{session.Slot.Id}: {entry.Station} from {entry.StartMin} to {entry.EndMin}");
            }
        }

        for (double at = 0.05; at < session.Slot.Minutes; at += 0.1)
        {
            var now = session.Rotation.Where(r => r.StartMin < at && at < r.EndMin).ToList();
            foreach (var twice in now.SelectMany(r => r.AthleteIds).GroupBy(a => a).Where(g => g.Count() > 1))
            {
                wrong.Add($"{session.Slot.Id} {at:0.0} min: {twice.Key} in two places");
            }

            var use = now.SelectMany(r =>
                ExerciseOf(r.ExerciseId, request).Kit.Select(k => (k.Id, Count: k.Count * r.AthleteIds.Length))
            );
            foreach (var kit in use.GroupBy(u => u.Id))
            {
                if (kit.Sum(u => u.Count) > request.Kit.Where(k => k.Id == kit.Key).Sum(k => k.Count))
                {
                    wrong.Add($"{session.Slot.Id} {at:0.0} min: too much {kit.Key} in use");
                }
            }

            foreach (
                var station in now.Where(r => r.Station != "floor").GroupBy(r => r.Station).Where(g => g.Count() > 1)
            )
            {
                wrong.Add($"{session.Slot.Id} {at:0.0} min: {station.Key} holds two entries");
            }
        }

        foreach (AthleteSession one in session.Athletes)
        {
            double last = 0;
            int lowSoFar = 0;
            bool others = false;
            foreach (PlannedItem item in one.Items)
            {
                Exercise exercise = ExerciseOf(item.Dose.ExerciseId, request);
                var own = session
                    .Rotation.Where(r => r.ExerciseId == exercise.Id && r.AthleteIds.Contains(one.AthleteId))
                    .ToList();
                double minutes = own.Sum(r => r.EndMin - r.StartMin);
                if (own.Count == 0 || minutes < (item.Sets * item.Dose.MinutesPerSet) - 1e-6)
                {
                    wrong.Add($"{session.Slot.Id} {one.AthleteId} {exercise.Id}: {minutes} min on the floor");
                    continue;
                }

                double starts = own.Min(r => r.StartMin);
                // The first of several sets with full effort is an easy one, and the time line says until when.
                bool easy = item.Dose.Intent == "maximal" && item.Dose.ContactsPerRep > 0 && item.Sets > 1;
                double? until = easy ? starts + item.Dose.MinutesPerSet : null;
                if (
                    own.Count(r => r.EasyUntilMin != null) != (easy ? 1 : 0)
                    || !Near(own.MinBy(r => r.StartMin)!.EasyUntilMin, until)
                )
                {
                    wrong.Add($"{session.Slot.Id} {one.AthleteId} {exercise.Id}: easy until {own[0].EasyUntilMin}");
                }

                if (starts < last)
                {
                    wrong.Add($"{session.Slot.Id} {one.AthleteId} {exercise.Id}: out of order");
                }

                last = starts;
                bool low = IsLow(exercise, item.Dose.DropHeightM);
                if (low && others)
                {
                    wrong.Add($"{session.Slot.Id} {one.AthleteId} {exercise.Id}: low work after other work");
                }

                int step = exercise.Entry.Length == 0 ? 0 : 1;
                if (low && step < lowSoFar)
                {
                    wrong.Add($"{session.Slot.Id} {one.AthleteId} {exercise.Id}: easier low work after harder");
                }

                lowSoFar = low ? step : lowSoFar;
                others |= !low;
                double work = session.Slot.Minutes - request.Limits.OpeningMinutes;
                double latest = request.Limits.OpeningMinutes + (work * request.Limits.FreshWithinShare);
                if (IsFresh(exercise, item.Dose.DropHeightM) && starts > latest + 1e-6)
                {
                    wrong.Add($"{session.Slot.Id} {one.AthleteId} {exercise.Id}: begins at {starts}, not fresh");
                }
            }

            int shown = session
                .Rotation.Where(r => r.AthleteIds.Contains(one.AthleteId))
                .Select(r => r.ExerciseId)
                .Distinct()
                .Count();
            if (shown != one.Items.Length)
            {
                wrong.Add(
                    $"{session.Slot.Id} {one.AthleteId}: {shown} exercises on the floor, {one.Items.Length} planned"
                );
            }
        }

        return wrong;
    }
}
