using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Plans.Asking;

/// <summary>What may be planned for one athlete, and what may not and why.</summary>
internal sealed class AthleteAsking
{
    private const int PairPoints = 4;

    private readonly History _history;
    private readonly PlanRequest _request;
    private readonly Profile _profile;
    private readonly Ladder _ladder;
    private readonly LimitBook _limits;
    private readonly Squad _squad;
    private readonly Amendments _amendments;
    private readonly Wanting _wanting;
    private readonly ImmutableDictionary<LocalDate, OpenWork> _open;
    private readonly ImmutableArray<RecentWork> _recent;
    private readonly ImmutableArray<FixtureWindow> _fixtures;
    private readonly HashSet<string> _openSomewhere = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Sentence>> _closedBecause = new(StringComparer.Ordinal);

    public AthleteAsking(History history, Squad squad, DateTimeZone zone, PlanRequest request, Amendments amendments)
    {
        _amendments = amendments;
        _history = history;
        _request = request;
        _squad = squad;
        _limits = LimitBook.For(history, request.From, request.From.PlusWeeks(request.Weeks).PlusDays(-1));
        _profile = Profiling.Of(history, request.From);
        _ladder = Ladders.For(_profile, history, request.Catalogue, request.From, LadderOptions.From(_limits));
        _open = request
            .Slots.Select(s => s.Date)
            .Append(request.From)
            .Distinct()
            .ToImmutableDictionary(
                day => day,
                day => new OpenWork(
                    _ladder,
                    OpenWork.RulingsOn(
                        history,
                        squad,
                        request.Catalogue,
                        day,
                        request.Slots.Where(s => s.Date == day).Select(s => s.Surface)
                    ),
                    request.Catalogue,
                    request.Kit
                )
            );
        bool soreAchilles = _open.Values.Any(day => day.Rulings.Any(r => r.Effect is NoAnkleSprings));
        _wanting = new Wanting(_profile, _ladder, history, request.From, soreAchilles);
        _recent = RecentWorks.Of(history, squad, zone, request.Catalogue, request.From);
        _fixtures = [.. request.Fixtures.Select(f => FixtureWindow.Of(f, request))];
    }

    public AthleteRequest Build()
    {
        int perSession = ContactCaps.PerSessionNow(_history, _ladder.ComingBack is not null, _limits, _request.From);
        WeeklyLoads weekly = new(_history, _squad, _request, _limits, perSession)
        {
            RuledOn = day => ContactCaps.OnDay(perSession, RulingsOn(day)),
        };
        ImmutableArray<MenuItem> menu = [.. _request.Slots.SelectMany(s => MenuOf(s))];
        int variants = _limits.Whole("variants-per-session-most");
        // Of a family a session holds so many only, so that a menu of variants is shorter than it looks.
        int fewest = menu.GroupBy(m => m.SessionId)
            .Select(g =>
                g.GroupBy(m => Variants.KeyOf(m, _request))
                    .Sum(f => f.Key is null ? f.Count() : Math.Min(f.Count(), variants))
            )
            .DefaultIfEmpty(0)
            .Min();
        return new(
            _history.Athlete,
            perSession,
            ContactCaps.PerWeek(perSession, _limits),
            _limits.Whole("exercises-per-session-most"),
            menu,
            _recent,
            _open.ToImmutableDictionary(o => o.Key, o => o.Value.Rulings),
            [.. UnmetOf(menu)]
        )
        {
            VariantsPerSessionAtMost = variants,
            Begun = [.. _request.Slots.Where(HasBegun).Select(s => s.Id)],
            SoreLandingDaysBeforeFixture = SoreLandingDays,
            Drops = _ladder.Drops,
            DropStepM = _limits["drop-step"],
            ExercisesPerSessionAtLeast = Math.Min(_limits.Whole("exercises-per-session-least"), fewest),
            // Where a ruling closes it for every session there is no room for it, whatever the level allows.
            HighIntensityContactsPerSessionAtMost =
                _request.Slots.Length > 0 && _request.Slots.All(s => RulingsOn(s.Date).Any(ClosesHighIntensity))
                    ? 0
                    : ContactCaps.HighIntensityPerSession(_history, _limits, _request.From),
            Caps = menu.IsEmpty ? [] : weekly.Caps(),
            Growths = menu.IsEmpty ? [] : [.. weekly.Growths()],
            OtherJumping = [.. weekly.Other.Select(o => o.Says).Distinct()],
            Goals = menu.IsEmpty ? [] : [.. Goals()],
            Pairs = [.. _request.Slots.SelectMany(s => PairsOf(s, menu))],
            Prompts =
            [
                .. new[]
                {
                    GrowthCare.For(_history, _request.From),
                    HeavyCare.For(_history, _request.From),
                }.OfType<Sentence>(),
            ],
        };
    }

    private ImmutableArray<Ruling> RulingsOn(LocalDate day) => _open[day].Rulings;

    private int SoreLandingDays => _limits.Whole(SoreBeforeFixture.LimitId);

    private static bool ClosesHighIntensity(Ruling ruling) =>
        ruling.Effect is NoHighIntensity or NothingPlanned or NoJumps;

    private ImmutableArray<MenuItem> MenuOf(SessionSlot slot)
    {
        ImmutableArray<Ruling> rulings = RulingsOn(slot.Date);
        if (rulings.Any(r => r.Effect is NothingPlanned))
        {
            return [];
        }

        if (HasBegun(slot))
        {
            // What was done there counts as done; planned once more it would be asked for twice.
            foreach (Exercise exercise in _request.Catalogue.Exercises.Where(e => !e.Trains.IsEmpty))
            {
                Close(
                    exercise,
                    [$"What is logged in {slot.Said} stands as done; making the plan anew adds nothing to it."]
                );
            }

            return [];
        }

        List<MenuItem> open = [];
        foreach (Exercise exercise in _request.Catalogue.Exercises.Where(e => !e.Trains.IsEmpty))
        {
            if (_amendments.Leaves(slot.Id, _history.Athlete.Id, exercise.Id))
            {
                Close(exercise, [$"It was taken out of {slot.Said} by hand."]);
            }
            else if (ItemOf(exercise, slot, rulings) is { } item)
            {
                open.Add(item);
                _openSomewhere.Add(exercise.Id);
            }
        }

        ImmutableArray<MenuItem> shortlist = Shortlist.Of(open, _request.Catalogue, _wanting);
        // What is locked and open stays to be chosen from, however little it is wanted.
        return
        [
            .. shortlist,
            .. open.Where(m =>
                !shortlist.Contains(m)
                && _request.Locks.Any(l =>
                    l.AthleteId == _history.Athlete.Id && l.SessionId == slot.Id && l.ExerciseId == m.ExerciseId
                )
            ),
        ];
    }

    /// <summary>Whether work of that very session is logged already, or may have been done in it.</summary>
    private bool HasBegun(SessionSlot slot) =>
        slot.Date == _request.From
        && (
            _history.Completed.Any(c => c.Date == slot.Date && c.SessionId == slot.Id)
            || _history.PossiblyDone.Any(p => p.Date == slot.Date && p.SessionId == slot.Id)
        );

    private MenuItem? ItemOf(Exercise exercise, SessionSlot slot, ImmutableArray<Ruling> rulings)
    {
        ImmutableArray<Opening>? later = Foreseeing.Of(exercise, _ladder, _limits);
        // Steps are foreseen from the second week on, when there was time to log and look; whoever a symptom or a written
        // word holds back takes none ahead of its time.
        if (
            PlanRequest.WeekOf(slot.Date) == PlanRequest.WeekOf(_request.From)
            || rulings.Any(r => r.Effect is TierAtMost or OnlyExercises or NoAnkleSprings)
        )
        {
            later = null;
        }

        if (later is not null && _request.Slots.Count(s => s.Date < slot.Date) < later.Value.Max(o => o.Sessions))
        {
            later = null;
        }

        OpenWork today = _open[slot.Date];
        if (later is not null)
        {
            today = today.Under(Foreseeing.With(_ladder, exercise));
        }

        if (today.Of(exercise) is { IsOpen: false } closed)
        {
            Close(exercise, closed.Closings.Select(c => c.Because));
            return null;
        }

        if (!Doses.For(exercise, today, _profile, _history, slot.Date).TryGet(out Dose? dose, out Refusal? refusal))
        {
            Close(exercise, [refusal.Said]);
            return null;
        }

        var closing = today
            .Of(exercise, dose.DropHeightM)
            .Closings.Select(c => c.Because)
            .Concat(TooNear(exercise, dose, slot))
            .ToList();
        if (closing.Count > 0)
        {
            Close(exercise, closing);
            return null;
        }

        // Whatever is to be done instead, should it hurt that day, keeps to the rule for what is sore then.
        bool eve = _fixtures.Any(w => SoreBeforeFixture.IsNear(slot.Date, w.Fixture.Date, SoreLandingDays));
        return new(
            slot.Id,
            eve
                ? dose with
                {
                    Instead = Doses.Instead(
                        exercise,
                        dose,
                        _open[slot.Date],
                        _profile,
                        _history,
                        slot.Date,
                        onFloor: false
                    ),
                }
                : dose,
            _wanting.ItemPoints(exercise, dose.SetsMax),
            [
                .. (later ?? []).Select(o =>
                    Sentence.Of(
                        $"Opens once {SaidExercise.ById(o.ExerciseId):small} was done cleanly in {o.Sessions} sessions of this plan; until then it is not done."
                    )
                ),
                .. _wanting.Because(exercise),
                .. StaysOpen.BesidePain(exercise, rulings),
                .. StaysOpen.NearFixtures(exercise, slot, _fixtures, _request.Limits),
                .. dose.Because,
            ]
        )
        {
            After = later ?? [],
        };
    }

    /// <summary>Fixtures and earlier work that close the entry in that session.</summary>
    private IEnumerable<Sentence> TooNear(Exercise exercise, Dose dose, SessionSlot slot)
    {
        bool high = dose.HighIntensity || exercise.IsHighIntensityAt(dose.DropHeightM);
        foreach (FixtureWindow window in _fixtures)
        {
            bool quiet = high && FixtureWindow.IsQuietDay(window.Fixture, slot.Date, _request.Limits);
            if (quiet || (OrderOfWork.IsTopTier(exercise) && window.HoursWithin(slot) > 0))
            {
                yield return $"High-intensity work in {slot.Said} would be too near {window.Fixture.Name} on {window.Fixture.Date:uuuu-MM-dd}.";
            }
            else if (FixtureWindow.Unrecovered(exercise, slot, window.Fixture, _request) is { } unrecovered)
            {
                yield return unrecovered;
            }
            else if (
                SoreBeforeFixture.Loaded(
                    exercise.FactsAt(dose.DropHeightM),
                    RulingsOn(slot.Date),
                    slot.Date,
                    window.Fixture.Date,
                    SoreLandingDays
                ) is
                { } sore
            )
            {
                yield return SoreBeforeFixture.Because(sore, window.Fixture.Name, window.Fixture.Date);
            }
        }

        foreach (RecentWork recent in _recent)
        {
            if (
                OrderOfWork.RecoveryHoursOf(exercise, recent.Tissue) > 0
                && slot.StartUtc - recent.EndUtc < Duration.FromHours(recent.RecoveryHours)
            )
            {
                yield return $"{SaidExercise.ById(recent.ExerciseId)} was done too short a while before {slot.Said}: {recent.RecoveryHours} h are needed.";
                yield break;
            }
        }
    }

    private void Close(Exercise exercise, IEnumerable<Sentence> because)
    {
        if (!_closedBecause.TryGetValue(exercise.Id, out List<Sentence>? sentences))
        {
            sentences = [];
            _closedBecause[exercise.Id] = sentences;
        }

        sentences.AddRange(because.Where(s => !sentences.Contains(s)));
    }

    private IEnumerable<QualityGoal> Goals() =>
        from week in _request.Slots.Select(s => PlanRequest.WeekOf(s.Date)).Distinct().Order()
        from quality in Enum.GetValues<Quality>()
        let points = _wanting.GoalPoints(quality)
        select new QualityGoal(
            quality,
            week,
            points,
            _wanting.FindingOf(quality)?.Sentence ?? $"{Wanting.Word(quality)} was not tested."
        );

    /// <summary>One light partner for each heavy exercise of the session's menu.</summary>
    private IEnumerable<ContrastPair> PairsOf(SessionSlot slot, ImmutableArray<MenuItem> menu)
    {
        var here = menu.Where(m => m.SessionId == slot.Id).Select(m => _request.Catalogue.Find(m.ExerciseId)!).ToList();
        foreach (Exercise heavy in here.Where(e => e is { ContactsPerRep: 0, PairsWith: not null }))
        {
            Exercise? light =
                here.Find(e => e.Id == heavy.PairsWith)
                ?? here.Find(e => e.PairsWith == heavy.Id && e.ContactsPerRep > 0);
            yield return new(slot.Id, heavy.Id, light?.Id ?? heavy.PairsWith!, _limits.Whole("pair-rest"), PairPoints);
        }
    }

    private IEnumerable<Unmet> UnmetOf(ImmutableArray<MenuItem> menu)
    {
        var shut = _request
            .Slots.SelectMany(s => RulingsOn(s.Date))
            .Where(r => r.Effect is NothingPlanned)
            .DistinctBy(r => r.LimitId)
            .ToList();
        if (shut.Count > 0)
        {
            yield return new(
                _history.Athlete.Id,
                "any-exercise",
                [
                    .. shut.SelectMany(r =>
                            new[] { r.Because, Sentence.Of($"Ask {((NothingPlanned)r.Effect).WhomToAsk}.") }
                        )
                        .Distinct(),
                ]
            );
            if (menu.IsEmpty)
            {
                yield break;
            }
        }

        var planned = menu.Select(m => m.ExerciseId).ToHashSet(StringComparer.Ordinal);
        var wanted = _profile
            .Findings.Where(f => f.Verdict is FindingVerdict.Limits or FindingVerdict.Unclear)
            .OrderByDescending(f => f.Probability ?? 0)
            .Select(f => f.Quality)
            .Take(2)
            .DefaultIfEmpty(Quality.ReactiveStrength);
        foreach (Quality quality in wanted)
        {
            Exercise? nearest = _request
                .Catalogue.Exercises.Where(e =>
                    e.Trains is [var first, ..]
                    && first == quality
                    && !planned.Contains(e.Id)
                    && _closedBecause.ContainsKey(e.Id)
                    // What is open in one session of the plan is not what stands in the way of the quality.
                    && !_openSomewhere.Contains(e.Id)
                )
                .OrderBy(e => StandsBehindAnother(e) ? 1 : 0)
                .ThenBy(e => _closedBecause[e.Id].Count)
                .ThenByDescending(e => e.Stage)
                .ThenBy(e => e.Id, StringComparer.Ordinal)
                .FirstOrDefault();
            if (nearest is not null)
            {
                yield return new(_history.Athlete.Id, nearest.Id, [.. _closedBecause[nearest.Id].Take(4)]);
            }
        }
    }

    /// <summary>True when an exercise that is closed itself has to be owned first: then that one is nearer.</summary>
    private bool StandsBehindAnother(Exercise exercise) =>
        exercise.Entry.Any(c => c.OwnedExercise is { } id && _ladder.Find(id) is not { State: not RungState.Closed });
}
