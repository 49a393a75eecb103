using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Desk.Keeping;
using Jumpwright.App.Settings;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Sessions;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>
/// What the pages work on: the book as it stands now, and the few ways in which it changes. Readers take the book once and
/// see one state of it; writers stand in line.
/// </summary>
public sealed class FrontDesk : IDisposable
{
    // Whatever changes makes another state, and with it an empty shelf.
    private static readonly ConditionalWeakTable<State, PageShelf> Shelves = [];

    private static readonly Refusal NothingYet = Refusal.Of($"Nothing is planned yet.");

    private static readonly TimeSpan LongestBeforeAPage = TimeSpan.FromSeconds(3);

    private readonly OpenedSquad _opened;
    private readonly SolveBudget? _budget;
    private readonly int _weeks;
    private readonly Lock _writing = new();
    private readonly Lock _plans = new();
    private readonly CancellationTokenSource _closing = new();
    private Task _reading;
    private readonly TaskCompletionSource _looked = new();
    private readonly TaskCompletionSource _shown = new();
    private CancellationTokenSource? _search;
    private Task _searching = Task.CompletedTask;
    private readonly Task _reopening = Task.CompletedTask;
    private volatile State _state;

    /// <summary>Opens the desk on a day; nothing is planned yet.</summary>
    /// <param name="opened">The squad; the desk closes it.</param>
    /// <param name="day">The day the decisions are for.</param>
    /// <param name="weeks">How many weeks are planned.</param>
    /// <param name="budget">How the planner may work; null takes its defaults.</param>
    public FrontDesk(OpenedSquad opened, LocalDate day, int weeks, SolveBudget? budget = null)
    {
        _opened = opened;
        _budget = budget;
        _weeks = weeks;
        Settings = SettingsFile.For(opened);
        Catalogue catalogue = opened.Material.Catalogue;
        var book = new Workbook(
            opened.Material,
            day,
            catalogue,
            Bookkeeping.Leaves(opened.Material, catalogue, day),
            NothingYet
        );
        _state = new State(book, new PictureBook(book.Material, null, Settings.Now.Units), null, false);
        _reading = Task.Run(ReadAhead);
        if (_opened.KeptFor(day) is { } kept)
        {
            Say($"The plan made before is being opened.");
            _reopening = Task.Run(() => Reopen(kept));
        }
    }

    /// <summary>Everything the pages show, as of now.</summary>
    public Workbook Book => _state.Book;

    /// <summary>The pictures of the book's athletes.</summary>
    public PictureBook Pictures => _state.Pictures;

    /// <summary>The search that is under way; null when there is none.</summary>
    public Planning? Planning => _state.Planning;

    /// <summary>Whether the folder's recordings are still being looked through, so that some may be missing.</summary>
    public bool IsLooking => !_looked.Task.IsCompleted && _opened.IsBehind;

    /// <summary>Whether the plan made before is still being opened.</summary>
    internal bool IsOpening => !_reopening.IsCompleted;

    /// <summary>Whether everybody is read and the recordings are looked through, so that pages change only when something is written.</summary>
    internal bool IsSettled => !IsLooking && !IsOpening && Book.Leaves.All(l => l.IsWorkedOut);

    /// <summary>Somebody has a page: what waited for that goes on.</summary>
    internal void Shown() => _shown.TrySetResult();

    /// <summary>Pages of what the desk holds now.</summary>
    internal PageShelf Shelf => Shelves.GetValue(_state, _ => new PageShelf());

    /// <summary>Why the folder's recordings could not be looked through, or new ones not be taken in; null when nothing is amiss.</summary>
    public string? LookTrouble { get; private set; }

    /// <summary>What was asked of the planner and waits to be taken or left; null when nothing does.</summary>
    public Proposal? Proposal => _state.Proposal;

    /// <summary>What was asked of the plan by hand.</summary>
    public Amendments Amendments => AmendmentReading.Of(Journal);

    /// <summary>Whether something was written since the plan was made.</summary>
    public bool PlanIsOld => _state.PlanIsOld;

    /// <summary>The journal, in the order in which it came in.</summary>
    public ImmutableArray<JournalEntry> Journal => _opened.Entries;

    internal OpenedSquad Opened => _opened;

    /// <summary>How the pages speak and when they lock.</summary>
    internal SettingsFile Settings { get; }

    /// <summary>Writes to the journal. Once this returns the entries are on the disk and the book follows them.</summary>
    public JournalReceipt Write(params IReadOnlyList<JournalEntry> entries)
    {
        lock (_writing)
        {
            JournalReceipt receipt = _opened.Append(entries);
            if (receipt.Added.Length > 0)
            {
                bool old = _state.PlanIsOld;
                Follow();
                // What the plan holds already can be locked without a new plan.
                if (entries.All(e => e.Kind == EntryKinds.Lock))
                {
                    _state = _state with { PlanIsOld = old };
                }
            }

            return receipt;
        }
    }

    /// <summary>Does something to the squad while nobody else writes; the book follows it.</summary>
    internal T Change<T>(Func<OpenedSquad, T> change)
    {
        lock (_writing)
        {
            T done = change(_opened);
            Follow();
            return done;
        }
    }

    /// <summary>Plans and waits for it.</summary>
    public void Plan(IProgress<Sentence>? progress, CancellationToken cancel)
    {
        // What can stay of the plan before stays, also of one made before the program was closed.
        _reopening.Wait(cancel);
        Workbook book = _state.Book;
        Outcome<PlannedWeek> week = Planned(book, AmendmentReading.Of(Journal), progress, cancel);
        if (
            week.TryGet(out PlannedWeek? made, out _)
            && made.Plan.Status is PlanStatus.Infeasible
            && FallenLocks(made.Request) is { IsEmpty: false } fallen
        )
        {
            // What was closed since it was locked is not done, and the rest is still planned.
            Amendments asked = AmendmentReading.Of(Journal);
            week = Planned(book, asked with { Locks = asked.Locks.RemoveRange(fallen) }, progress, cancel)
                .Then<PlannedWeek>(w =>
                    w with
                    {
                        Plan = w.Plan with
                        {
                            Remarks =
                            [
                                .. w.Plan.Remarks,
                                .. fallen.Select(l =>
                                    Sentence.Of(
                                        $"The lock on {SaidExercise.ById(l.ExerciseId):small} of {made.Request.NameOf(l.AthleteId)} in {new SaidSession(l.SessionId)} does not hold: it is not open there any more."
                                    )
                                ),
                            ],
                        },
                    }
                );
        }

        lock (_writing)
        {
            Workbook now = _state.Book;
            bool old = !ReferenceEquals(now.Material, book.Material);
            _state = _state with
            {
                // What was written while it was worked out closes in it, too.
                Book = now with
                {
                    Week = old ? week.Then(w => StillStanding(w, book, now.Leaves, now.Material)) : week,
                },
                PlanIsOld = old,
            };
            Keep();
        }
    }

    /// <summary>Plans as if those entries were written, and waits for it; nothing is written.</summary>
    public void Try(
        string asks,
        ImmutableArray<JournalEntry> entries,
        IProgress<Sentence>? progress,
        CancellationToken cancel
    )
    {
        Workbook book = _state.Book;
        var proposal = new Proposal(
            asks,
            entries,
            Planned(book, AmendmentReading.Of(Journal.AddRange(entries)), progress, cancel),
            book.Material
        );
        lock (_writing)
        {
            _state = _state with { Proposal = proposal };
        }
    }

    /// <summary>Takes the proposal: its entries are written and its plan is the plan. A sentence when it can't be taken.</summary>
    public Refusal? TakeProposal()
    {
        lock (_writing)
        {
            if (_state.Proposal is not { } proposal)
            {
                return Refusal.Of($"There is nothing to take.");
            }

            _state = _state with { Proposal = null };
            if (!ReferenceEquals(proposal.From, _state.Book.Material))
            {
                return Refusal.Of($"Something was written since it was worked out, so it was not taken. Ask again.");
            }

            if (
                !proposal.Outcome.TryGet(out PlannedWeek? week, out Refusal? refusal)
                || week.Plan.Status is not (PlanStatus.Optimal or PlanStatus.Feasible)
            )
            {
                return refusal ?? Refusal.Of($"It is no plan, so it can't be taken.");
            }

            _opened.Append(proposal.Entries);
            Follow();
            _state = _state with { Book = _state.Book with { Week = week }, PlanIsOld = false };
            Keep();
            return null;
        }
    }

    /// <summary>Puts the proposal away; the plan stays as it was.</summary>
    public void DropProposal()
    {
        lock (_writing)
        {
            _state = _state with { Proposal = null };
        }
    }

    private Outcome<PlannedWeek> Planned(
        Workbook book,
        Amendments asked,
        IProgress<Sentence>? progress,
        CancellationToken cancel
    )
    {
        return Bookkeeping.Plan(
            book.Material,
            book.Catalogue,
            book.Day,
            _weeks,
            _budget,
            progress,
            cancel,
            book.PlanOrNull is { Plan.Status: PlanStatus.Optimal or PlanStatus.Feasible } planned
                ? Follows(planned.Plan, asked.Moved)
                : null,
            asked
        );
    }

    /// <summary>Locks on what is no longer open, or not with so many sets.</summary>
    private static ImmutableArray<LockedItem> FallenLocks(PlanRequest request) =>
        [
            .. request.Locks.Where(l =>
                request.Athletes.FirstOrDefault(a => a.Athlete.Id == l.AthleteId)?.OnMenu(l.SessionId, l.ExerciseId)
                    is not { } menu
                || l.Sets < menu.Dose.SetsMin
                || l.Sets > menu.Dose.SetsMax
            ),
        ];

    /// <summary>The plan before, with its sessions called as they are now, so that what can stay stays where a session went.</summary>
    private static Plan Follows(Plan plan, ImmutableArray<MovedSession> moved)
    {
        foreach (MovedSession move in moved)
        {
            plan = plan with
            {
                Sessions =
                [
                    .. plan.Sessions.Select(s =>
                        s.Slot.Id == move.SessionId
                            ? s with
                            {
                                Slot = s.Slot with
                                {
                                    Id = SessionSlot.IdOf(move.Date, move.Start),
                                    Date = move.Date,
                                    Start = move.Start,
                                },
                            }
                            : s
                    ),
                ],
            };
        }

        return plan;
    }

    /// <summary>Keeps other settings; pictures are drawn in the new units from now on; sentences are written in them wherever they are shown.</summary>
    internal void Keep(HouseSettings settings)
    {
        lock (_writing)
        {
            bool otherUnits = settings.Units != Settings.Now.Units;
            Settings.Keep(settings);
            if (!otherUnits)
            {
                return;
            }

            _state = _state with { Pictures = new PictureBook(_state.Book.Material, null, settings.Units) };
        }
    }

    /// <summary>Shows a plan that was made before.</summary>
    public void Show(PlannedWeek week)
    {
        lock (_writing)
        {
            _state = _state with { Book = _state.Book with { Week = week }, PlanIsOld = false };
        }
    }

    /// <summary>
    /// Begins the day: plans as soon as everybody is read and the folder's recordings were looked through. The pages stand
    /// meanwhile.
    /// </summary>
    public void Begin() =>
        Start(
            $"Reading what was measured.",
            (progress, cancel) =>
            {
                _looked.Task.Wait(cancel);
                Plan(progress, cancel);
            }
        );

    /// <summary>Begins to plan; a search that is under way is left to end.</summary>
    public void StartPlanning() => Start($"Planning begins.", Plan);

    /// <summary>Begins to work out what would come of those entries.</summary>
    public void StartTrying(string asks, ImmutableArray<JournalEntry> entries)
    {
        DropProposal();
        Start($"Working out what would come of it.", (progress, cancel) => Try(asks, entries, progress, cancel));
    }

    private void Start(Sentence words, Action<IProgress<Sentence>?, CancellationToken> search)
    {
        lock (_plans)
        {
            if (!_searching.IsCompleted)
            {
                return;
            }

            _search?.Dispose();
            _search = new CancellationTokenSource();
            CancellationToken cancel = _search.Token;
            Say(words);
            _searching = Task.Run(
                () =>
                {
                    try
                    {
                        search(new Telling(Say), cancel);
                    }
                    catch (OperationCanceledException)
                    {
                        // The plan that was there stays.
                    }
                    catch (Exception e) when (e is not OutOfMemoryException)
                    {
                        Faulted(
                            $"Planning ended by a fault in this program ({e.GetType().Name}); report it. Nothing new is planned."
                        );
                    }
                    finally
                    {
                        lock (_writing)
                        {
                            _state = _state with { Planning = null };
                        }
                    }
                },
                CancellationToken.None
            );
        }
    }

    /// <summary>Ends a search; the plan that was there stays.</summary>
    public void StopPlanning()
    {
        lock (_plans)
        {
            _search?.Cancel();
        }
    }

    public void Dispose()
    {
        _closing.Cancel();
        StopPlanning();
        try
        {
            Task.WaitAll([_searching, _reading, _reopening], TimeSpan.FromSeconds(10));
        }
        catch (AggregateException)
        {
            // Its own end says nothing to whoever closes the desk.
        }

        _search?.Dispose();
        _closing.Dispose();
        _opened.Dispose();
    }

    /// <summary>
    /// Reads everybody's trials and works their leaves out, so that whoever opens a page later does not
    /// wait; a page that comes before takes what it needs itself. Then the recordings are looked through where they were not yet.
    /// The squad's trends need everybody, so they come last.
    /// </summary>
    private void ReadAhead()
    {
        try
        {
            Parallel.ForEach(
                Book.Leaves,
                new ParallelOptions
                {
                    CancellationToken = _closing.Token,
                    MaxDegreeOfParallelism = Math.Clamp(Environment.ProcessorCount, 1, 2),
                },
                leaf => leaf.WorkOut()
            );

            // The first page goes before what nobody waits for yet.
            _shown.Task.Wait(LongestBeforeAPage, _closing.Token);
            LookThrough();
        }
        finally
        {
            _looked.TrySetResult();
        }

        DrawAhead();
    }

    /// <summary>Draws everybody's report and last jump; ends where the book goes on meanwhile, because the next turn draws that.</summary>
    private void DrawAhead()
    {
        State now = _state;
        // What is drawn has axes in the units of the settings; its words must be in them too, whoever started the drawing.
        Speech.Use(Speech.Now.As(Settings.Now) with { Catalogue = now.Book.Catalogue });
        now.Pictures.TrendsOn(now.Book.Day);
        foreach (AthleteLeaf leaf in now.Book.Leaves)
        {
            if (_closing.IsCancellationRequested || !ReferenceEquals(_state.Pictures, now.Pictures))
            {
                return;
            }

            now.Pictures.DrawAhead(leaf.Dossier, now.Book.Day);
        }
    }

    private void LookThrough()
    {
        if (!_opened.IsBehind)
        {
            return;
        }

        try
        {
            if (
                _opened.LookThrough(_closing.Token)
                && !Change(o => o.ImportAgain(null, _closing.Token)).TryGet(out _, out Refusal? refusal)
            )
            {
                LookTrouble = refusal.Sentence;
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            LookTrouble = e.Message;
        }
    }

    private void Faulted(Sentence fault)
    {
        lock (_writing)
        {
            _state = _state with { Book = _state.Book with { Week = Refusal.Of(fault) } };
        }
    }

    private void Say(Sentence words)
    {
        lock (_writing)
        {
            _state = _state with { Planning = new Planning(words) };
        }
    }

    /// <summary>The book after the squad's material changed: only leaves whose history changed are made anew.</summary>
    private void Follow()
    {
        Workbook before = _state.Book;
        SquadMaterial now = _opened.Material;
        if (ReferenceEquals(before.Material, now))
        {
            return;
        }

        ImmutableArray<AthleteLeaf> leaves = Bookkeeping.Leaves(
            now,
            now.Catalogue,
            before.Day,
            // Another catalogue opens and closes other rungs.
            now.Catalogue.Exercises.SequenceEqual(before.Catalogue.Exercises)
                ? before.Leaves
                : []
        );
        _state = _state with
        {
            Book = before with
            {
                Material = now,
                Catalogue = now.Catalogue,
                Leaves = leaves,
                // Why nothing could be planned need not hold any more; a plan stays until there is another.
                // But who is gone takes it along, and whoever something was written of that closes more does nothing of it.
                Week = before.PlanOrNull is { } week ? StillStanding(week, before, leaves, now) : NothingYet,
            },
            Pictures = new PictureBook(now, _state.Pictures, Settings.Now.Units),
            PlanIsOld = before.PlanOrNull is not null,
        };
        if (!ReferenceEquals(_state.Book.PlanOrNull, before.PlanOrNull))
        {
            Keep();
        }

        _reading = _reading.ContinueWith(
            _ => DrawAhead(),
            CancellationToken.None,
            TaskContinuationOptions.None,
            TaskScheduler.Default
        );
    }

    /// <summary>Keeps the plan as it stands, so that it is there again when the program is.</summary>
    private void Keep()
    {
        if (_state.Book.PlanOrNull is { } week)
        {
            _opened.Keep(week);
        }
    }

    /// <summary>Opens the plan that was kept last: of what is asked now, with what was closed and what has come since closed.</summary>
    private void Reopen(StoredPlan kept)
    {
        Outcome<PlannedWeek> week = NothingYet;
        bool isSame = false;
        try
        {
            Workbook? asked = null;
            while (!_closing.IsCancellationRequested)
            {
                lock (_writing)
                {
                    if (ReferenceEquals(asked?.Material, _state.Book.Material))
                    {
                        _state = _state with
                        {
                            Book = _state.Book with { Week = week },
                            PlanIsOld = !isSame && week.TryGet(out _, out _),
                        };
                        return;
                    }
                }

                // What was written meanwhile is asked, too.
                asked = _state.Book;
                (week, isSame) = Reopened(kept, asked);
            }
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Faulted(
                $"The plan made before was not opened, by a fault in this program ({e.GetType().Name}); report it, and plan anew."
            );
        }
        finally
        {
            lock (_writing)
            {
                _state = _state with { Planning = _searching.IsCompleted ? null : _state.Planning };
            }
        }
    }

    private (Outcome<PlannedWeek> Week, bool IsSame) Reopened(StoredPlan kept, Workbook book)
    {
        if (
            book.Material.StopsPlanning.Length == 0
            && Requests
                .For(
                    book.Material.Squad,
                    book.Material.Histories,
                    book.Catalogue,
                    kept.From,
                    kept.Weeks,
                    _budget,
                    AmendmentReading.Of(Journal)
                )
                .TryGet(out PlanRequest? request, out _)
            && KeptWeek.Read(kept.Json) is { } read
            && read.Again(request, book.Material, book.Leaves, book.Day) is { } week
        )
        {
            return (week, read.IsAskedTheSame(request));
        }

        return (
            Refusal.Of(
                $"The plan of {kept.From} does not fit what is known now (athletes, exercises or this version of the program changed); plan anew."
            ),
            false
        );
    }

    /// <summary>The plan as it stands after something was written; none where it names somebody who is gone.</summary>
    private static Outcome<PlannedWeek> StillStanding(
        PlannedWeek week,
        Workbook before,
        ImmutableArray<AthleteLeaf> leaves,
        SquadMaterial material
    )
    {
        var now = leaves.ToDictionary(l => l.Athlete.Id, StringComparer.Ordinal);
        if (!week.Request.Athletes.All(a => now.ContainsKey(a.Athlete.Id)))
        {
            return NothingYet;
        }

        ImmutableArray<SessionCard> cards =
        [
            .. week.Cards.Select(card =>
                Cards.Since(card, RulingsSince(before.Find(card.AthleteId), now[card.AthleteId]), before.Day)
            ),
        ];
        return cards.SequenceEqual(week.Cards) ? week : week.After(cards, material);
    }

    private static ImmutableArray<Ruling> RulingsSince(AthleteLeaf? before, AthleteLeaf now) =>
        before is null || ReferenceEquals(before, now)
            ? []
            : [.. now.Rulings.Where(r => !before.Rulings.Any(b => b.Because == r.Because))];

    private sealed record State(
        Workbook Book,
        PictureBook Pictures,
        Planning? Planning,
        bool PlanIsOld,
        Proposal? Proposal = null
    );

    private sealed class Telling(Action<Sentence> tell) : IProgress<Sentence>
    {
        public void Report(Sentence value) => tell(value);
    }
}
